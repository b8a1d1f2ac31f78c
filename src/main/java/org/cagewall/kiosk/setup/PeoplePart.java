package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.TwoButtons;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.Role;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Who there is on the left; on the right somebody who is added or changed. Used on the event thread. */
final class PeoplePart extends ListPart {

    private final PeoplePresenter presenter;
    private Optional<PeopleState> before = Optional.empty();

    PeoplePart(Desk desk, Pen pen, Words words) {
        super("people", words);
        presenter = new PeoplePresenter(desk, pen, words, this::render);
    }

    @Override
    Refresher watch() {
        return presenter.watch();
    }

    private void render(PeopleState state) {
        boolean others =
                before.filter(old -> old.people().equals(state.people())).isEmpty();
        if (others
                || before.filter(old -> old.changing().equals(state.changing())).isEmpty()) {
            fillList(state);
            fillSide(state);
        }
        problem.say(state.problem());
        before = Optional.of(state);
        view.revalidate();
        view.repaint();
    }

    private void fillList(PeopleState state) {
        list.removeAll();
        for (PeopleState.Someone each : state.people()) {
            String phone = each.phone().isEmpty() ? words.say("setup.no-phone") : each.phone();
            RowFace face = RowFace.of("", each.name(), phone)
                    .tagged(TagKind.PLAIN, words.say("setup.role." + Message.word(each.role())));
            ListRow row = new ListRow("person." + each.name(), face, () -> presenter.touch(each.name()));
            row.setSelected(state.changing().equals(Optional.of(each)));
            list.add(row);
        }
    }

    private void fillSide(PeopleState state) {
        side.removeAll();
        problem.forgetFields();
        Optional<PeopleState.Someone> whom = state.changing();
        Stack body = new Stack(16);
        body.add(new WrapLabel(
                whom.map(each -> words.say("setup.change-person", each.name()))
                        .orElseGet(() -> words.say("setup.new-person")),
                TextStyle.LEAD,
                Tone.INK));
        Optional<Field> name = whom.isPresent()
                ? Optional.empty()
                : Optional.of(problem.about("name", Field.line("name", words.say("setup.name"), "")));
        name.ifPresent(body::add);
        Chips<Role> role = Chips.oneOf("role", Choice.of(Role.values(), words, "setup.role."), any -> {})
                .choose(List.of(whom.map(PeopleState.Someone::role).orElse(Role.SITTER)));
        body.add(Labelled.of(words.say("setup.what-does"), role));
        body.add(new WrapLabel(words.say("setup.roles-text"), TextStyle.SECOND, Tone.SOFT));
        Field phone = problem.about(
                "phone",
                Field.line(
                        "phone",
                        words.say("setup.phone"),
                        whom.map(PeopleState.Someone::phone).orElse("")));
        body.add(phone);
        if (whom.filter(each -> !each.phone().isEmpty()).isPresent()) {
            body.add(new WrapLabel(words.say("setup.phone-text"), TextStyle.SECOND, Tone.SOFT));
        }
        side.add(new TouchScroll(words, "person", body), "grow, wmin 0, hmin 0");
        side.add(problem, "wmin 0");
        side.add(
                whom.isPresent()
                        ? two(() -> presenter.change(role.one().orElseThrow(), phone.value()))
                        : button(
                                ButtonKind.MAIN,
                                "add-person",
                                words.say("setup.add-person"),
                                () -> presenter.add(
                                        name.map(Field::value).orElse(""),
                                        role.one().orElseThrow(),
                                        phone.value())),
                "wmin 0");
    }

    private TwoButtons two(Runnable change) {
        return new TwoButtons(
                TouchButton.of(ButtonKind.OUTLINED, "leave", words.say("setup.leave"), () -> presenter.nobody()),
                TouchButton.of(ButtonKind.MAIN, "change-person", words.say("setup.save"), change));
    }

    private static TouchButton button(ButtonKind kind, String name, String text, Runnable onPress) {
        return TouchButton.of(kind, name, text, onPress).type(TextStyle.LEAD).tall(72);
    }
}
