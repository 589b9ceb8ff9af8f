package readback.calc.fluid;

/**
 * Which end of boiling a saturation value belongs to. A pure refrigerant has one saturation temperature at a pressure;
 * a blend with glide has two, and the wrong one is wrong by the whole glide.
 */
public enum Side {
    /** The first bubble in the liquid: subcooling is measured from here. */
    BUBBLE,
    /** The last drop in the vapour: superheat is measured from here. */
    DEW
}
