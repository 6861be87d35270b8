package org.kitweft.ui.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.band.Backing;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.RoleVoicings;
import org.kitweft.groove.Tempo;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonFile;
import org.kitweft.lesson.LessonItem;
import org.kitweft.lesson.LessonPhrase;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.session.PhraseDraft;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

class LessonDeskTest {
    @TempDir Path folder;
    private final SessionModel session = new SessionModel(Session.opening());
    private final LessonDesk desk = new LessonDesk(session);

    private void addGroove() {
        session.edit("Add", LessonEdits.addGroove(session.session()));
    }

    @Test
    void aNewWindowHasNothingToLose() {
        assertThat(desk.unsaved()).isFalse();
    }

    @Test
    void aGrooveComesBackFromTheFileAsItWas() throws IOException {
        addGroove();
        assertThat(desk.unsaved()).isTrue();
        Path file = folder.resolve("week.kitweft");
        desk.save(file, false);
        assertThat(desk.unsaved()).isFalse();

        SessionModel other = new SessionModel(Session.opening().typed("RRLL"));
        new LessonDesk(other).open(file);
        assertThat(other.session().recipe()).isEqualTo(session.recipe());
        assertThat(other.session().item()).isEqualTo(OptionalInt.of(0));
    }

    @Test
    void savingKeepsTheChangesOfTheOpenItem() throws IOException {
        addGroove();
        session.edit("Tempo", session.session().with(new Tempo(150)));
        assertThat(LessonEdits.hasChanges(session.session())).isTrue();
        desk.save(folder.resolve("a.kitweft"), false);
        assertThat(session.session().lesson().items().get(0).tempo()).isEqualTo(new Tempo(150));
    }

    @Test
    void anExistingFileIsNotReplacedUnasked() throws IOException {
        Path file = Files.writeString(folder.resolve("a.kitweft"), "mine");
        assertThatThrownBy(() -> desk.save(file, false))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(file).hasContent("mine");
    }

    @Test
    void aDamagedFileLeavesTheSessionAsItWas() throws IOException {
        addGroove();
        Session before = session.session();
        Path file = Files.writeString(folder.resolve("half.kitweft"), "{\"format\":\"kitweft-les");
        assertThatThrownBy(() -> desk.open(file)).hasMessageContaining("half.kitweft");
        assertThat(session.session()).isEqualTo(before);
    }

    @Test
    void theOpenItemIsFollowedWhenItemsMoveAndGo() {
        addGroove();
        addGroove();
        addGroove();
        Session three = session.session();
        assertThat(three.lesson().items())
                .extracting(LessonItem::title)
                .containsExactly("Groove 1", "Groove 2", "Groove 3");
        Session up = LessonEdits.move(three, 2, -1);
        assertThat(up.item()).isEqualTo(OptionalInt.of(1));
        assertThat(LessonEdits.remove(up, 0).item()).isEqualTo(OptionalInt.of(0));
        assertThat(LessonEdits.remove(up, 1).item()).isEmpty();
        assertThat(LessonEdits.move(three, 2, 1)).isEqualTo(three);
    }

    @Test
    void whatIsOnlyHeardIsNotSavedInPlaceOfTheOpenItem() throws IOException {
        addGroove();
        Recipe own = session.recipe();
        Recipe heard = own.with(Sticking.parse("RRLL"));
        Recipe other = own.with(Sticking.parse("RLLR"));
        session.hear("Choose variation", session.session().with(other).with(Role.FILL));
        session.hear("Choose variation", session.session().with(heard).with(Role.FILL));
        assertThat(LessonEdits.hasChanges(session.session())).isFalse();
        desk.save(folder.resolve("heard.kitweft"), false);
        assertThat(session.recipe()).as("it goes on being heard").isEqualTo(heard);
        assertThat(savedItem("heard.kitweft").recipe()).isEqualTo(own);
        assertThat(savedItem("heard.kitweft").role()).isEqualTo(Role.TIME);

        session.take();
        desk.save(folder.resolve("taken.kitweft"), false);
        assertThat(savedItem("taken.kitweft").recipe()).isEqualTo(heard);
        assertThat(savedItem("taken.kitweft").role()).isEqualTo(Role.FILL);
    }

    @Test
    void anEditOfWhatIsHeardTakesIt() throws IOException {
        addGroove();
        session.hear("Choose", session.session().with(session.recipe().with(Sticking.parse("RR"))));
        session.edit("Type", session.session().typed("RRL"));
        desk.save(folder.resolve("edited.kitweft"), false);
        assertThat(savedItem("edited.kitweft").recipe().sticking().text()).isEqualTo("RRL");
    }

    @Test
    void tempoAndSwingGoIntoTheItemWhileSomethingElseIsHeard() throws IOException {
        addGroove();
        Recipe own = session.recipe();
        session.hear("Choose", session.session().with(own.with(Sticking.parse("RRLL"))));
        session.edit("Tempo", session.session().with(new Tempo(77)));
        session.edit("Swing", session.session().withSwing(60));
        desk.save(folder.resolve("swung.kitweft"), false);
        assertThat(savedItem("swung.kitweft").tempo()).isEqualTo(new Tempo(77));
        assertThat(savedItem("swung.kitweft").recipe())
                .isEqualTo(own.with(own.grid().withSwing(60)));
    }

    @Test
    void whatIsHeardInAnOpenSectionIsNotSavedWithThePhrase() throws IOException {
        makePhrase(8);
        session.edit(
                "Open",
                session.session().with(session.session().draft().withOpen(OptionalInt.of(0))));
        PhrasePlan own = session.session().draft().plan().orElseThrow();
        session.hear(
                "Choose", session.session().with(session.recipe().with(Sticking.parse("RRLL"))));
        assertThat(session.session().draft().plan().orElseThrow()).isNotEqualTo(own);
        Path file = folder.resolve("phrase.kitweft");
        desk.save(file, false);
        assertThat(LessonFile.read(file).phrases().get(0).plan()).isEqualTo(own);
        assertThat(session.recipe().sticking().text()).isEqualTo("RRLL");
    }

    private LessonItem savedItem(String name) throws IOException {
        return LessonFile.read(folder.resolve(name)).items().get(0);
    }

    private void makePhrase(int bars) {
        var recipe = session.recipe();
        PhrasePlan plan =
                PhrasePlan.ofOne(
                        recipe,
                        RoleVoicings.fill(recipe.voicing(), recipe.kit()),
                        RoleVoicings.punch(recipe.voicing(), recipe.kit()),
                        bars);
        session.edit(
                "Make",
                session.session()
                        .with(
                                session.session()
                                        .draft()
                                        .with(plan)
                                        .with(Backing.DEFAULT.withOn(true).withStyle("bossa"))
                                        .withPlays(true)));
    }

    @Test
    void aPhraseComesBackFromTheFileWithItsBand() throws IOException {
        makePhrase(8);
        assertThat(desk.unsaved()).isTrue();
        Path file = folder.resolve("week.kitweft");
        desk.save(file, false);
        assertThat(desk.unsaved()).isFalse();
        SessionModel other = new SessionModel(Session.opening());
        new LessonDesk(other).open(file);
        PhraseDraft draft = other.session().draft();
        assertThat(draft.plan()).isEqualTo(session.session().draft().plan());
        assertThat(draft.backing()).isEqualTo(Backing.DEFAULT.withOn(true).withStyle("bossa"));
        assertThat(draft.plays()).isTrue();
        assertThat(draft.kept()).isEqualTo(OptionalInt.of(0));
    }

    @Test
    void savingKeepsTheChangesOfTheOpenPhraseAndItsTitle() throws IOException {
        makePhrase(8);
        session.edit("Keep", LessonEdits.keepPhrase(session.session()));
        session.edit("Title", LessonEdits.phraseTitle(session.session(), 0, "Eight"));
        PhraseDraft draft = session.session().draft();
        session.edit(
                "Length",
                session.session().with(draft.with(draft.plan().orElseThrow().withBars(12))));
        assertThat(LessonEdits.hasChanges(session.session())).isTrue();
        desk.save(folder.resolve("a.kitweft"), false);
        assertThat(session.session().lesson().phrases())
                .singleElement()
                .satisfies(
                        phrase -> {
                            assertThat(phrase.title()).isEqualTo("Eight");
                            assertThat(phrase.plan().bars()).isEqualTo(12);
                        });
    }

    @Test
    void theOpenPhraseIsFollowedWhenPhrasesMoveAndGo() {
        makePhrase(4);
        session.edit("Keep", LessonEdits.keepPhrase(session.session()));
        Session now = session.session();
        session.edit(
                "Second",
                LessonEdits.keepPhrase(now.with(now.draft().withKept(OptionalInt.empty()))));
        Session two = session.session();
        assertThat(two.lesson().phrases())
                .extracting(LessonPhrase::title)
                .containsExactly("Phrase 1", "Phrase 2");
        Session up = LessonEdits.movePhrase(two, 1, -1);
        assertThat(up.draft().kept()).isEqualTo(OptionalInt.of(0));
        assertThat(up.lesson().phrases().get(0).title()).isEqualTo("Phrase 2");
        assertThat(LessonEdits.removePhrase(two, 0).draft().kept()).isEqualTo(OptionalInt.of(0));
        Session gone = LessonEdits.removePhrase(two, 1);
        assertThat(gone.draft().kept()).isEmpty();
        assertThat(gone.draft().plan()).as("it is still being edited").isPresent();
        assertThat(LessonEdits.movePhrase(two, 1, 1)).isEqualTo(two);
    }

    @Test
    void aNewLessonBeginsWithoutThePhraseOfTheFormerOne() {
        makePhrase(4);
        desk.begin();
        assertThat(session.session().draft().plan()).isEmpty();
        assertThat(desk.unsaved()).isFalse();
        session.undo();
        assertThat(session.session().draft().plan()).isPresent();
    }

    @Test
    void theDrawerListsItemsAndThenPhrases() {
        addGroove();
        makePhrase(4);
        session.edit("Keep", LessonEdits.keepPhrase(session.session()));
        assertThat(Entry.of(session.session().lesson()))
                .extracting(Entry::title, Entry::phrase, Entry::detail)
                .containsExactly(
                        tuple("Groove 1", false, session.recipe().sticking().text()),
                        tuple("Phrase 1", true, "4 bars: time, fill, punch, band: bossa"));
        Session opened = EntryEdits.open(session.session(), Entry.of(lesson()).get(0));
        assertThat(opened.draft().plays()).as("an item opened is what plays").isFalse();
        assertThat(EntryEdits.open(opened, Entry.of(lesson()).get(1)).draft().plays()).isTrue();
    }

    private Lesson lesson() {
        return session.session().lesson();
    }
}
