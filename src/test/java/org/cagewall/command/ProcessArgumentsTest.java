package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Words with accents on a machine whose language setting knows none. */
class ProcessArgumentsTest {

    @Test
    void lettersThatJavaLostAreTakenFromTheSystem() {
        String told = "java\0-jar\0cagewall.jar\0check\0K\u00fcche?\0--by\0Zo\u00eb\0--note\0all well?\0";

        assertThat(ProcessArguments.mended(
                        new String[] {"check", "K??che?", "--by", "Zo\uFFFD\uFFFD", "--note", "all well?"}, told))
                .containsExactly("check", "K\u00fcche?", "--by", "Zo\u00eb", "--note", "all well?");
    }

    @Test
    void wordsStayAsTheyAreWhereTheSystemTellsFewer() {
        assertThat(ProcessArguments.mended(new String[] {"a?", "b"}, "b\0")).containsExactly("a?", "b");
    }
}
