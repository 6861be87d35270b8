package org.kitweft.explore.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.explore.role.RoleFit;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class RoleSearchTest {
    private static final int TRIES = 1200;
    private final Kit kit = BuiltInKits.load("five-piece");

    @ParameterizedTest
    @EnumSource(Role.class)
    void findsRecipesThatServeTheRoleBetterThanAnyOther(Role role) {
        List<Serving> found = search(RoleWish.of(role, kit, Grid.SIXTEENTHS), 5);
        assertThat(found).hasSize(5);
        for (Serving serving : found) {
            assertThat(serving.fit().best()).isEqualTo(role);
            assertThat(serving.fit().of(role).reasons()).isNotEmpty();
            assertThat(serving.recipe().weave().conflicts()).isEmpty();
            assertThat(RoleFit.of(serving.recipe().weave())).isEqualTo(serving.fit());
        }
    }

    @Test
    void isTheSameForTheSameSeedAndOtherForAnother() {
        RoleWish wish = RoleWish.of(Role.FILL, kit, Grid.SIXTEENTHS);
        assertThat(RoleSearch.search(wish, 3, 300, 1, SearchWatch.NONE))
                .isEqualTo(RoleSearch.search(wish, 3, 300, 1, SearchWatch.NONE))
                .isNotEqualTo(RoleSearch.search(wish, 3, 300, 2, SearchWatch.NONE));
    }

    @Test
    void noTwoAreNearlyAlike() {
        List<Serving> found = search(RoleWish.of(Role.TIME, kit, Grid.SIXTEENTHS), 8);
        for (Serving one : found) {
            for (Serving other : found) {
                Set<String> struck = struck(one);
                Set<String> all = struck(other);
                struck.retainAll(all);
                int common = struck.size();
                all.addAll(struck(one));
                assertThat(one.equals(other) || all.size() - common >= all.size() / 2.0).isTrue();
            }
        }
    }

    private static Set<String> struck(Serving serving) {
        return serving.recipe().weave().hits().stream()
                .map(hit -> hit.written() + " " + hit.sound())
                .collect(Collectors.toSet());
    }

    @Test
    void keepsAGivenSticking() {
        Sticking sticking = Sticking.parse("RLRR LRLL RLRR LRLL");
        RoleWish wish = RoleWish.of(Role.FILL, kit, Grid.SIXTEENTHS).with(sticking);
        List<Serving> found = search(wish, 4);
        assertThat(found).extracting(s -> s.recipe().sticking()).containsOnly(sticking);
        double plain = RoleFit.of(Recipe.plain(sticking, kit).weave()).of(Role.FILL).value();
        assertThat(found.get(0).fit().of(Role.FILL).value()).isGreaterThan(plain);
    }

    @ParameterizedTest
    @ValueSource(strings = {"hand-drums", "marimba"})
    void searchesKitsWithoutFeetToo(String name) {
        RoleWish wish = RoleWish.of(Role.FILL, BuiltInKits.load(name), Grid.SIXTEENTHS);
        assertThat(RoleSearch.search(wish, 2, 300, 1, SearchWatch.NONE)).hasSize(2);
    }

    @Test
    void showsProgressAndStopsWhenAsked() {
        List<Integer> shown = new ArrayList<>();
        SearchWatch watch =
                new SearchWatch() {
                    @Override
                    public void progress(int done, int all) {
                        shown.add(done);
                        assertThat(all).isEqualTo(TRIES);
                    }

                    @Override
                    public boolean isCancelled() {
                        return shown.size() == 2;
                    }
                };
        RoleWish wish = RoleWish.of(Role.TIME, kit, Grid.SIXTEENTHS);
        assertThat(RoleSearch.search(wish, 3, TRIES, 1, watch)).hasSize(3);
        assertThat(shown).containsExactly(50, 100);
    }

    @Test
    void refusesWishesThatNothingCanFulfil() {
        RoleWish wish = RoleWish.of(Role.TIME, kit, Grid.SIXTEENTHS);
        assertThatThrownBy(() -> RoleSearch.search(wish, 0, 10, 1, SearchWatch.NONE))
                .hasMessage("0 recipes of 10 tries: expected at least 1 of each");
        Kit marimba = BuiltInKits.load("marimba");
        RoleWish feet =
                new RoleWish(
                        Role.TIME,
                        marimba,
                        Grid.SIXTEENTHS,
                        wish.sticking(),
                        4,
                        Set.of(Letter.K),
                        wish.weights());
        assertThatThrownBy(() -> RoleSearch.search(feet, 1, 10, 1, SearchWatch.NONE))
                .hasMessage("kit \"marimba\" has nothing for the letters [K]");
    }

    private static List<Serving> search(RoleWish wish, int most) {
        return RoleSearch.search(wish, most, TRIES, 5, SearchWatch.NONE);
    }
}
