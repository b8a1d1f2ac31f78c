/**
 * The one frame, the way from screen to screen, and what lies over a screen: sheets, the line of what was done, the page
 * after a failure. Screens do not know one another: they ask the {@link org.cagewall.kiosk.shell.Navigator}.
 *
 * <p>A screen is three classes in a package of its own, so that what it does can be tested without Swing:
 *
 * <pre>{@code
 * public record CageState(String title, List<RowFace> entries, Optional<Message> problem) {}
 *
 * public final class CagePresenter {                       // imports no Swing
 *     private final Shown<CageState> shown;
 *
 *     public CagePresenter(Desk desk, Navigator navigator, Notices notices, Consumer<CageState> view) {
 *         shown = new Shown<>(CageState.of(desk.room()), view);
 *     }
 *
 *     public void allWell() {                              // the view's buttons call these
 *         desk.record(List.of(check), outcome -> shown.change(state -> state.after(outcome)));
 *     }
 * }
 *
 * public final class CageScreen extends JPanel implements Screen {   // renders, decides nothing
 *     public void show(CageState state) { ... }            // the presenter's Consumer
 * }
 * }</pre>
 *
 * <p>The desk's answers arrive through {@link org.cagewall.kiosk.shell.EventThread}; in tests they arrive at once.
 */
package org.cagewall.kiosk.shell;
