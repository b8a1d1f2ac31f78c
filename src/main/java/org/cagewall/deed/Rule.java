package org.cagewall.deed;

import java.util.List;
import org.cagewall.text.Message;

/** One small question put to a deed before it is recorded. Pure; any thread. */
@FunctionalInterface
public interface Rule {

    Ruling judge(Scene scene);

    /** The first refusal among the rules; else all their questions as one, so that none is passed over by one answer. */
    static Rule together(Rule... rules) {
        return scene -> {
            Ruling answer = Ruling.ALLOWED;
            for (Rule rule : rules) {
                Ruling ruling = rule.judge(scene);
                if (ruling instanceof Ruling.Refused) {
                    return ruling;
                }
                if (ruling instanceof Ruling.Asks asks) {
                    answer = answer instanceof Ruling.Asks before
                            ? new Ruling.Asks(Message.of("deed.asks-also", before.question(), asks.question()))
                            : asks;
                }
            }
            return answer;
        };
    }

    /** The first refusal among the rules; else, where the deed is not sure, the first question; else allowed. */
    static Ruling judgeAll(List<Rule> rules, Scene scene) {
        Ruling answer = Ruling.ALLOWED;
        for (Rule rule : rules) {
            Ruling ruling = rule.judge(scene);
            if (ruling instanceof Ruling.Refused) {
                return ruling;
            }
            if (ruling instanceof Ruling.Asks
                    && answer == Ruling.ALLOWED
                    && !scene.told().sure()) {
                answer = ruling;
            }
        }
        return answer;
    }
}
