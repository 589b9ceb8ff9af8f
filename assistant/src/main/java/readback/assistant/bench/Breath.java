package readback.assistant.bench;

/**
 * Words that are said in one breath.
 *
 * @param pause quiet behind them before the next ones, seconds, 0 or more
 */
record Breath(String words, double pause) {}
