package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.Optional;
import org.cagewall.room.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a reading of the thermometer means for the birds. The limits are settings: common practice, no source. */
class WarmthTest {

    private final Settings settings = Settings.initial(ZoneOffset.UTC);

    @ParameterizedTest
    @CsvSource({
        "-3, COLD, PHONE_NOW",
        "5, COLD, PHONE_NOW",
        "30, HEAT, PHONE_IF_UNSURE",
        "31, HEAT, PHONE_IF_UNSURE",
        "32, HEAT, PHONE_NOW",
        "40, HEAT, PHONE_NOW"
    })
    void pastALimitItIsADanger(int degrees, Danger danger, Urgency urgency) {
        assertThat(Warmth.of(degrees).danger(settings)).contains(danger);
        assertThat(Warmth.of(degrees).urgency(settings)).isEqualTo(urgency);
    }

    @ParameterizedTest
    @CsvSource({"6", "20", "29"})
    void betweenTheLimitsItIsNone(int degrees) {
        assertThat(Warmth.of(degrees).danger(settings)).isEmpty();
    }

    @Test
    void whatWasNotReadIsNoDanger() {
        assertThat(new Warmth(Optional.empty(), Optional.empty()).danger(settings))
                .isEmpty();
    }
}
