/** The outdoor unit as its maker built it: how efficient it is, and what follows from that for its readings. */
@org.jspecify.annotations.NullMarked
package readback.calc.equipment;
