package org.cagewall.command;

import org.cagewall.room.care.Answer;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the answer of a check as it is typed. Stateless; any thread. */
final class AnswerWord implements ITypeConverter<Answer> {

    @Override
    public Answer convert(String word) {
        return switch (word) {
            case "well" -> Answer.WELL;
            case "different" -> Answer.DIFFERENT;
            default -> throw new TypeConversionException("say well or different, not '" + word + "'");
        };
    }
}
