package org.cagewall.kiosk.scan;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.scan.Looking;
import org.cagewall.scan.Luma;
import org.cagewall.text.Words;

/** Puts into words what the camera does, and answers the touches beside its picture. Used on the event thread. */
final class ScanPresenter implements Lookout.Watcher {

    /** When a touch makes the camera look again. */
    private static final Set<Lookout.Look> OFFERED =
            Set.of(Lookout.Look.OFF, Lookout.Look.TROUBLED, Lookout.Look.RESTING);

    private final Desk desk;
    private final Lookout lookout;
    private final Small small;
    private final Words words;
    private final Consumer<Luma> live;
    private final Shown<ScanState> shown;

    ScanPresenter(Desk desk, Lookout lookout, Small small, Words words, Consumer<ScanState> view, Consumer<Luma> live) {
        this.desk = desk;
        this.lookout = lookout;
        this.small = small;
        this.words = words;
        this.live = live;
        this.shown =
                new Shown<>(new ScanState(words.say("scanscreen.off"), false, true, List.of(), "", small.isOn()), view);
    }

    /** The screen is there: whoever opens it wants to scan. */
    void open() {
        lookout.watch(this);
        lookout.look();
    }

    /** The small view is there: it looks only if the camera looked before. */
    void accompany() {
        lookout.watch(this);
    }

    void close() {
        lookout.leave(this);
    }

    void look() {
        lookout.look();
    }

    void choose(String camera) {
        lookout.choose(camera);
        keep(() -> KioskSettings.keepCamera(desk.folder().kioskProperties(), camera));
    }

    void keepSmall() {
        small.on();
        shown.change(this::switched);
    }

    void putSmallAway() {
        small.off();
        shown.change(this::switched);
    }

    @Override
    public void status(Lookout.Status status) {
        shown.change(before -> state(status));
    }

    @Override
    public void picture(Luma picture) {
        live.accept(picture);
    }

    /** A choice that cannot be kept holds until the kiosk is left. */
    private void keep(Runnable write) {
        desk.work(
                book -> {
                    write.run();
                    return true;
                },
                written -> {});
    }

    private ScanState switched(ScanState before) {
        return new ScanState(
                before.line(), before.picture(), before.mayLook(), before.cameras(), before.chosen(), small.isOn());
    }

    private ScanState state(Lookout.Status status) {
        return new ScanState(
                words.sentence(status.line()),
                status.look() == Lookout.Look.SEEING,
                OFFERED.contains(status.look()),
                status.cameras().stream().map(this::camera).toList(),
                status.chosen().orElse(""),
                small.isOn());
    }

    private ScanState.Camera camera(Looking.Choice choice) {
        return new ScanState.Camera(choice.id(), words.say(choice.name()));
    }
}
