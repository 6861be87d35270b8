package org.kitweft.pattern;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** One step of a sticking: somebody strokes, or nobody does. */
public sealed interface Stroke {

    /** The one rest. */
    Stroke REST = new Rest();

    /** A plain stroke of a letter. */
    static Stroke of(Letter letter) {
        return new Struck(letter, Dynamic.PLAIN, Ornament.NONE);
    }

    /** A stroke of a letter. */
    static Stroke of(Letter letter, Dynamic dynamic, Ornament ornament) {
        return new Struck(letter, dynamic, ornament);
    }

    /** The stroke, or empty for a rest. */
    Optional<Struck> struck();

    /** The stroke with right and left hand exchanged. */
    Stroke handsSwapped();

    /** The stroke as the sticking text writes it. */
    String text();

    /**
     * A letter with its dynamic and ornament. A flam or drag on a letter that is not one hand is
     * refused: no other hand could play its grace notes.
     */
    record Struck(Letter letter, Dynamic dynamic, Ornament ornament) implements Stroke {
        public Struck {
            Objects.requireNonNull(letter, "letter");
            Objects.requireNonNull(dynamic, "dynamic");
            Objects.requireNonNull(ornament, "ornament");
            if (ornament.graceNotes() > 0 && !letter.isOneHand()) {
                throw new IllegalArgumentException(
                        "a %s needs a right or left hand, not %s"
                                .formatted(ornament.name().toLowerCase(Locale.ROOT), letter));
            }
        }

        @Override
        public Optional<Struck> struck() {
            return Optional.of(this);
        }

        @Override
        public Struck handsSwapped() {
            return new Struck(letter.handsSwapped(), dynamic, ornament);
        }

        /** The same stroke, louder or softer. */
        public Struck withDynamic(Dynamic other) {
            return new Struck(letter, other, ornament);
        }

        @Override
        public String text() {
            String grace = letter.handsSwapped().name().toLowerCase(Locale.ROOT);
            String body =
                    grace.repeat(ornament.graceNotes())
                            + letter
                            + (ornament == Ornament.BUZZ ? "z" : "");
            return switch (dynamic) {
                case GHOST -> "(" + body + ")";
                case PLAIN -> body;
                case ACCENT -> ">" + body;
            };
        }
    }

    /** Silence for one step. */
    record Rest() implements Stroke {
        @Override
        public Optional<Struck> struck() {
            return Optional.empty();
        }

        @Override
        public Stroke handsSwapped() {
            return this;
        }

        @Override
        public String text() {
            return "-";
        }
    }
}
