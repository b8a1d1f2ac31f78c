package org.cagewall.almanac;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.cagewall.room.Span;

/** How often something took how many days. Filled once, by one thread; after that any thread may read it. */
final class Tally {

    /** The most days that an owner may set for a value; what took longer was a slip of the pen. */
    private static final int MOST_DAYS = 400;

    private int[] counts = new int[0];
    private int count;

    /** Notes one more, in days; fewer than none and more than may be set are left out. */
    void add(long days) {
        if (days < 0 || days > MOST_DAYS) {
            return;
        }
        if (days >= counts.length) {
            counts = Arrays.copyOf(counts, (int) days + 1);
        }
        counts[(int) days]++;
        count++;
    }

    int count() {
        return count;
    }

    /** All of them, shortest first. */
    List<Integer> days() {
        return IntStream.range(0, counts.length)
                .boxed()
                .flatMap(days -> IntStream.range(0, counts[days]).mapToObj(each -> days))
                .toList();
    }

    /**
     * The shortest run of days that holds this share of them, with their middle between; of several as short the one that
     * holds the most, and the earliest of those.
     *
     * @param share above 0, at most 1
     * @throws IllegalStateException where there are none
     */
    Span shortest(double share) {
        if (count == 0) {
            throw new IllegalStateException("no days");
        }
        int wanted = (int) Math.ceil(share * count);
        int from = 0;
        int to = counts.length - 1;
        int most = 0;
        int high = -1;
        int held = 0;
        for (int low = 0; low < counts.length; low++) {
            while (held < wanted && high + 1 < counts.length) {
                high++;
                held += counts[high];
            }
            if (held < wanted) {
                break;
            }
            if (high - low < to - from || high - low == to - from && held > most) {
                from = low;
                to = high;
                most = held;
            }
            held -= counts[low];
        }
        return new Span(from, Math.max(from, Math.min(middle(), to)), to);
    }

    private int middle() {
        int passed = 0;
        int day = -1;
        while (passed <= count / 2) {
            day++;
            passed += counts[day];
        }
        return day;
    }
}
