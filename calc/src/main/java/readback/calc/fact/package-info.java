/**
 * How the fact files that ship with this module are read. The facts themselves lie beside the classes that use them.
 */
@org.jspecify.annotations.NullMarked
package readback.calc.fact;
