/**
 * Keeps the recipe of the acoustic model working: its own tests, run from here. Needs Python; nothing else lives here.
 */
@NullMarked
package readback.grammar.recipe;

import org.jspecify.annotations.NullMarked;
