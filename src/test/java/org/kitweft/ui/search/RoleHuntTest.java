package org.kitweft.ui.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.search.RoleSearch;
import org.kitweft.explore.search.RoleWish;
import org.kitweft.explore.search.SearchWatch;
import org.kitweft.explore.search.Serving;
import org.kitweft.groove.Role;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

class RoleHuntTest {
    private static final int TRIES = 600;
    private final SessionModel session = new SessionModel(Session.opening());
    private final RoleHunt hunt = new RoleHunt(session, Tasks.DIRECT);

    private static RoleHunt.Question question(Role role, long seed) {
        return new RoleHunt.Question(
                role, Optional.empty(), 16, Set.of(Letter.R, Letter.L, Letter.K), TRIES, seed);
    }

    @Test
    void findsWhatTheSearchFindsOnTheKitAndGridOfNow() {
        hunt.search(question(Role.FILL, 7));
        RoleWish wish = RoleWish.of(Role.FILL, session.recipe().kit(), session.recipe().grid());
        assertThat(hunt.found())
                .isEqualTo(RoleSearch.search(wish, RoleHunt.LISTED, TRIES, 7, SearchWatch.NONE))
                .isNotEmpty();
        assertThat(hunt.line()).startsWith("the best ").endsWith(" for fill; seed 7, 600 tries");
        assertThat(hunt.part()).isEmpty();
    }

    @Test
    void theSameSeedFindsTheSameAgain() {
        hunt.search(question(Role.TIME, 1));
        List<Serving> first = hunt.found();
        hunt.search(question(Role.TIME, 2));
        assertThat(hunt.found()).isNotEqualTo(first);
        hunt.search(question(Role.TIME, 1));
        assertThat(hunt.found()).isEqualTo(first);
    }

    @Test
    void keepsAStickingThatIsGiven() {
        Sticking given = Sticking.parse("RLRR LRLL");
        hunt.search(
                new RoleHunt.Question(
                        Role.FILL, Optional.of(given), 16, given.letters(), TRIES, 1));
        assertThat(hunt.found()).extracting(s -> s.recipe().sticking()).containsOnly(given);
    }

    @Test
    void stoppedItHandsOverWhatItHasFound() {
        List<String> lines = new ArrayList<>();
        RoleHunt[] stopped = new RoleHunt[1];
        Tasks stoppingFirst =
                new Tasks() {
                    @Override
                    public <T> Running run(
                            String name,
                            Work<T> work,
                            Consumer<T> done,
                            Consumer<Exception> failed) {
                        stopped[0].stop();
                        return Tasks.DIRECT.run(name, work, done, failed);
                    }
                };
        stopped[0] = new RoleHunt(session, stoppingFirst);
        stopped[0].addListener(() -> lines.add(stopped[0].line()));
        stopped[0].search(question(Role.TIME, 1));
        assertThat(stopped[0].found()).isEmpty();
        assertThat(stopped[0].part()).isEmpty();
        assertThat(lines).first().isEqualTo("searching…");
        assertThat(lines).last().asString().startsWith("nothing found");
    }

    @Test
    void wishesThatNothingCanFulfilAreTold() {
        session.edit("Kit", session.session().on(BuiltInKits.load("marimba")));
        hunt.search(
                new RoleHunt.Question(Role.TIME, Optional.empty(), 8, Set.of(Letter.K), TRIES, 1));
        assertThat(hunt.isFault()).isTrue();
        assertThat(hunt.line()).isEqualTo("kit \"marimba\" has nothing for the letters [K]");
    }

    @Test
    void aRowSaysScoreAndReasons() {
        hunt.search(question(Role.FILL, 1));
        Serving best = hunt.found().get(0);
        Finding row = RolePane.finding(best, Role.FILL);
        long percent = Math.round(100 * best.fit().of(Role.FILL).value());
        assertThat(row.lead()).isEqualTo(percent + " %");
        assertThat(row.words()).startsWith(best.fit().of(Role.FILL).reasons().get(0).text());
        assertThat(FindingTable.detail(row))
                .contains(row.words(), RecipeWords.voicing(best.recipe()), "hard: ");
    }
}
