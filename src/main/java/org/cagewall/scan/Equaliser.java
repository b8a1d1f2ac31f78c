package org.cagewall.scan;

/**
 * Undoes blur, movement and uneven light in one symbol: the modules that are known teach how a module is to be told from
 * what it and its neighbours look like (least squares), and then all are told so. The clearest of the others teach the
 * next round. As a modem learns a line from a known beginning. One thread.
 */
final class Equaliser {

    /** A module is told by n modules in every direction; measured. */
    private static final int REACH = 2;

    private static final int WIDTH = 2 * REACH + 1;

    /** The neighbours, the light around, and a constant. */
    private static final int INPUTS = WIDTH * WIDTH + 2;

    /** Keeps the answer small where the known modules do not tell, in squares of a full step; measured. */
    private static final double RIDGE = 0.03;

    /** A module of data teaches when it was told so clearly in the round before; measured. */
    private static final double CLEAR = 0.3;

    private static final int ROUNDS = 4;

    /** How much a module counts of which only the last round tells what it is; measured. */
    private static final double GUESSED = 0.7;

    private final KnownModules known;
    private final double[][] inputs;
    private final int[] modules;

    private Equaliser(KnownModules known, int[] modules, double[][] inputs) {
        this.known = known;
        this.modules = modules;
        this.inputs = inputs;
    }

    /**
     * How dark each module is, 1 ink and -1 paper.
     *
     * @param first how dark it looks by itself
     */
    static double[] darkness(Samples samples, double[] first) {
        KnownModules known = samples.known();
        int side = known.side();
        int stride = known.stride();
        int[] modules = new int[side * side];
        double[][] inputs = new double[side * side][];
        double scale = scale(samples);
        int count = 0;
        for (int row = 0; row < side; row++) {
            for (int column = 0; column < side; column++) {
                int module = known.number(column, row);
                double[] input = new double[INPUTS];
                int i = 0;
                double sum = 0;
                for (int y = -REACH; y <= REACH; y++) {
                    for (int x = -REACH; x <= REACH; x++) {
                        double value = samples.value(module + y * stride + x) / scale;
                        input[i++] = value;
                        sum += value;
                    }
                }
                input[i++] = samples.value(module) / scale + first[module];
                input[i] = 1;
                modules[count] = module;
                inputs[count++] = input;
            }
        }
        return new Equaliser(known, modules, inputs).learnt(first);
    }

    private static double scale(Samples samples) {
        double least = Double.MAX_VALUE;
        double most = 0;
        for (int i = 0; i < samples.known().count(); i++) {
            least = Math.min(least, samples.value(i));
            most = Math.max(most, samples.value(i));
        }
        return Math.max(8, most - least) / 2;
    }

    private double[] learnt(double[] first) {
        double[] darkness = first.clone();
        for (int round = 0; round < ROUNDS; round++) {
            double[] weights = weights(darkness, round);
            for (int i = 0; i < modules.length; i++) {
                double told = 0;
                for (int j = 0; j < INPUTS; j++) {
                    told += weights[j] * inputs[i][j];
                }
                darkness[modules[i]] = told;
            }
        }
        return darkness;
    }

    private double[] weights(double[] darkness, int round) {
        double[][] normal = new double[INPUTS][INPUTS + 1];
        for (int i = 0; i < modules.length; i++) {
            int kind = known.kind(modules[i]);
            double told = darkness[modules[i]];
            double aim = kind;
            double weight = 1;
            if (kind == KnownModules.DATA) {
                if (round == 0 || Math.abs(told) < CLEAR) {
                    continue;
                }
                aim = Math.signum(told);
                weight = GUESSED;
            } else {
                double off = Math.abs(told - aim);
                weight = off < 1 ? 1 : 1 / (off * off * off);
            }
            double[] input = inputs[i];
            for (int j = 0; j < INPUTS; j++) {
                double part = weight * input[j];
                for (int k = j; k < INPUTS; k++) {
                    normal[j][k] += part * input[k];
                }
                normal[j][INPUTS] += part * aim;
            }
        }
        for (int j = 0; j < INPUTS; j++) {
            for (int k = 0; k < j; k++) {
                normal[j][k] = normal[k][j];
            }
            normal[j][j] += RIDGE;
        }
        return solved(normal);
    }

    /** Gauss and Jordan's elimination; the matrix is symmetric and positive, so its diagonal serves. */
    private static double[] solved(double[][] normal) {
        int size = normal.length;
        for (int i = 0; i < size; i++) {
            double[] pivot = normal[i];
            for (int row = i + 1; row < size; row++) {
                double share = normal[row][i] / pivot[i];
                if (share != 0) {
                    for (int column = i; column <= size; column++) {
                        normal[row][column] -= share * pivot[column];
                    }
                }
            }
        }
        double[] answer = new double[size];
        for (int i = size - 1; i >= 0; i--) {
            double sum = normal[i][size];
            for (int column = i + 1; column < size; column++) {
                sum -= normal[i][column] * answer[column];
            }
            answer[i] = sum / normal[i][i];
        }
        return answer;
    }
}
