package org.kitweft.score.handout;

import java.util.function.BiConsumer;
import org.kitweft.score.engrave.SignList;

/**
 * Something that stands in one piece on a page.
 *
 * @param height in points, the space under it included
 * @param keepsWithNext whether no page may end with it
 * @param draw places it with its upper edge at a y, between the margins
 */
record Block(double height, boolean keepsWithNext, BiConsumer<SignList, Double> draw) {}
