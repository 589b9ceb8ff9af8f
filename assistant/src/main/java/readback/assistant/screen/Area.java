package readback.assistant.screen;

/** A rectangle of cells; right and bottom are exclusive. */
record Area(int left, int top, int right, int bottom) {

    int width() {
        return right - left;
    }

    int height() {
        return bottom - top;
    }

    boolean contains(int column, int row) {
        return column >= left && column < right && row >= top && row < bottom;
    }

    /** The first rows of it. */
    Area first(int rows) {
        return new Area(left, top, right, Math.min(bottom, top + rows));
    }

    /** What is left below the first rows. */
    Area after(int rows) {
        return new Area(left, Math.min(bottom, top + rows), right, bottom);
    }
}
