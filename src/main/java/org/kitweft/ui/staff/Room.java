package org.kitweft.ui.staff;

/**
 * Paper over the first staff and under the last, kept from edit to edit so that the staff stays
 * where it is: more is taken at once, less only where much of it is no longer used.
 *
 * @param above staff spaces over the middle of the first staff
 * @param below staff spaces under the middle of the last staff
 */
record Room(double above, double below) {
    /** None yet. */
    static final Room NONE = new Room(0, 0);

    /** Staff spaces: an accent, a high note, a row of chords come and go within it. Our choice. */
    private static final double MOST_UNUSED = 6;

    /** The room to take where so much is needed and this was taken before. */
    Room keptFor(Room needed) {
        return new Room(kept(above, needed.above), kept(below, needed.below));
    }

    private static double kept(double before, double needed) {
        return before - needed > MOST_UNUSED ? needed : Math.max(before, needed);
    }
}
