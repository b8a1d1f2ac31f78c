package org.cagewall.command;

import org.cagewall.plan.Policy;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads when a nest counts as done, as it is typed. Stateless; any thread. */
final class PolicyWord implements ITypeConverter<Policy> {

    @Override
    public Policy convert(String word) {
        return switch (word) {
            case "weaned" -> Policy.WEANED;
            case "apart" -> Policy.APART;
            default -> throw new TypeConversionException("say weaned or apart, not '" + word + "'");
        };
    }
}
