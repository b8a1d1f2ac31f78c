package org.cagewall.kiosk.kit.list;

import java.util.Optional;
import org.cagewall.kiosk.kit.TagKind;

/**
 * What a row of a list says. Immutable; any thread.
 *
 * @param lead the large word at the left, such as a cage; may be empty
 * @param first the line to read
 * @param second the line below; may be empty
 * @param tag what stands at the right
 * @param state whether there is something to do
 */
public record RowFace(String lead, String first, String second, Optional<TagFace> tag, State state) {

    /** A tag's shape and words. */
    public record TagFace(TagKind kind, String text) {}

    /** Whether there is something to do. */
    public enum State {
        OPEN,
        DONE,
        DIFFERENT,
        /** Struck out: it stays readable with a line through it. */
        STRUCK
    }

    public static RowFace of(String lead, String first, String second) {
        return new RowFace(lead, first, second, Optional.empty(), State.OPEN);
    }

    public RowFace tagged(TagKind kind, String text) {
        return new RowFace(lead, first, second, Optional.of(new TagFace(kind, text)), state);
    }

    public RowFace in(State other) {
        return new RowFace(lead, first, second, tag, other);
    }

    String inOneSentence() {
        StringBuilder all = new StringBuilder(lead);
        for (String part : new String[] {first, second, tag.map(TagFace::text).orElse("")}) {
            if (!part.isEmpty()) {
                all.append(all.isEmpty() ? "" : ", ").append(part);
            }
        }
        return all.toString();
    }
}
