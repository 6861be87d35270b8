package org.kitweft.kit;

import java.util.Comparator;
import java.util.List;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * A name that stands for nothing here; the message lists those that do, and offers the nearest one
 * where it can be meant: at most half of the letters asked for are other ones.
 */
public final class UnknownNameException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    /**
     * @param what the kind of thing, e.g. {@code surface}
     * @param name what was asked for
     * @param where what was searched, e.g. {@code kit "five-piece"}
     * @param known the names there are, at least one
     */
    public UnknownNameException(String what, String name, String where, List<String> known) {
        super("%s \"%s\" is not in %s; %s".formatted(what, name, where, offer(name, known)));
    }

    private static String offer(String name, List<String> known) {
        LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
        return known.stream()
                .min(Comparator.comparingInt(candidate -> distance.apply(name, candidate)))
                .filter(candidate -> 2 * distance.apply(name, candidate) <= name.length())
                .map(nearest -> "did you mean \"%s\"? (%s)".formatted(nearest, listed(known)))
                .orElseGet(() -> "expected one of " + listed(known));
    }

    private static String listed(List<String> known) {
        int most = 12;
        return String.join(", ", known.subList(0, Math.min(most, known.size())))
                + (known.size() > most ? ", …" : "");
    }
}
