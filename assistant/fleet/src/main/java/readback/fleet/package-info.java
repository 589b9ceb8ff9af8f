/**
 * The records of thousands of tablets on a distributed engine, Apache Spark: their chains verified, their contents as
 * tables, and what a head of service asks of them. Runs in an office on Linux; nothing of it is on a tablet, and
 * nothing else of the house sees the engine. Open {@link readback.fleet.Fleet} first. Decision 0025.
 */
@org.jspecify.annotations.NullMarked
package readback.fleet;
