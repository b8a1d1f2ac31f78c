package org.cagewall.deed;

import java.util.List;

/** One small question put to a deed before it is recorded. Pure; any thread. */
@FunctionalInterface
public interface Rule {

    Ruling judge(Scene scene);

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
