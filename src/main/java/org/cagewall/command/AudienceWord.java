package org.cagewall.command;

import org.cagewall.tasks.Audience;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads for whom a list is, as it is typed. Stateless; any thread. */
final class AudienceWord implements ITypeConverter<Audience> {

    @Override
    public Audience convert(String word) {
        return switch (word) {
            case "owner" -> Audience.OWNER;
            case "sitter" -> Audience.SITTER;
            default -> throw new TypeConversionException("say owner or sitter, not '" + word + "'");
        };
    }
}
