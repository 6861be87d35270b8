package org.kitweft;

import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Voicing;
import org.kitweft.groove.Weaver;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;

/** Entry point of the program. */
public final class Kitweft {
    private Kitweft() {}

    /** Weaves the sticking in the arguments and prints its hits. */
    public static void main(String[] args) {
        Kit kit = BuiltInKits.load(BuiltInKits.DEFAULT);
        Groove groove =
                Weaver.weave(
                        Sticking.parse(args.length == 0 ? "RLRR LRLL" : args[0]),
                        kit,
                        Voicing.plain(kit),
                        Grid.SIXTEENTHS);
        groove.hits().forEach(System.out::println);
    }
}
