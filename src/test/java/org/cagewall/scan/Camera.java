package org.cagewall.scan;

import java.util.SplittableRandom;

/**
 * A made-up tablet camera that looks at a card: a pinhole of 60 degrees across, then what lens, hand, lamp and sensor do
 * to the picture. Blur, motion and pixels are counted in modules of the symbol.
 *
 * @param pixels pixels a module, where the camera looks
 * @param tilt of the card against the picture, degrees
 * @param tiltTowards the direction of the tilt, degrees
 * @param roll degrees
 * @param bend the card's curl, one over its radius in millimetres
 * @param bendTowards the direction across the curl, degrees
 * @param blur standard deviation, modules
 * @param motion length, modules
 * @param motionTowards degrees
 * @param exposure of white paper, 1 fills the scale
 * @param noise standard deviation in a mid-grey pixel, parts of the scale
 * @param glare how much light a lamp adds at its middle, 1 fills the scale
 * @param glareRadius millimetres
 */
record Camera(
        int width,
        int height,
        double pixels,
        double tilt,
        double tiltTowards,
        double roll,
        double bend,
        double bendTowards,
        double blur,
        double motion,
        double motionTowards,
        double exposure,
        double noise,
        double glare,
        double glareRadius) {

    /** A camera of 60 degrees across: half its width over the tangent of half of that. */
    private static final double FOCUS = 0.5 / Math.tan(Math.toRadians(30));

    /** IEC 61966-2-1 is close to this power. */
    private static final double GAMMA = 1 / 2.2;

    private static final int STEPS = 2;

    /** The picture that it takes of a card when it looks at a spot of it. */
    Luma picture(CardPaper paper, double lookX, double lookY, SplittableRandom chance) {
        float[] light = seen(paper, lookX, lookY, chance);
        if (blur > 0) {
            light = blurred(light, blur * pixels);
        }
        if (motion > 0) {
            light = moved(light, motion * pixels);
        }
        return developed(light, chance);
    }

    private float[] seen(CardPaper paper, double lookX, double lookY, SplittableRandom chance) {
        View view = new View(this, lookX, lookY);
        float[] light = new float[width * height];
        double shadeX = (chance.nextDouble() - 0.5) * 0.5;
        double shadeY = (chance.nextDouble() - 0.5) * 0.5;
        double wire = 20 + 40 * chance.nextDouble();
        double glareX = lookX + (chance.nextDouble() - 0.5) * 22;
        double glareY = lookY + (chance.nextDouble() - 0.5) * 22;
        double[] spot = new double[2];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double sum = 0;
                for (int step = 0; step < STEPS * STEPS; step++) {
                    double atX = x + (step % STEPS + 0.5) / STEPS;
                    double atY = y + (step / STEPS + 0.5) / STEPS;
                    view.find(atX - width / 2.0, atY - height / 2.0, spot);
                    sum += CardPaper.holds(spot[0], spot[1]) ? paper.at(spot[0], spot[1]) : wall(atX, atY, wire);
                }
                double shade = 1 + shadeX * (x / (double) width - 0.5) + shadeY * (y / (double) height - 0.5);
                double lamp = glare == 0
                        ? 0
                        : glare
                                * Math.exp(-(square(spot[0] - glareX) + square(spot[1] - glareY))
                                        / (2 * glareRadius * glareRadius));
                light[y * width + x] = (float) (exposure * sum / (STEPS * STEPS) * shade + lamp);
            }
        }
        return light;
    }

    /** A cage front: dark with bright wires. */
    private static double wall(double x, double y, double wire) {
        boolean onWire = x % wire < 3 || y % (4 * wire) < 5;
        return onWire ? 0.5 : 0.12 + 0.05 * Math.sin(x / 37 + y / 23);
    }

    private static double square(double value) {
        return value * value;
    }

    private float[] blurred(float[] light, double sigma) {
        int reach = (int) Math.ceil(3 * sigma);
        double[] weights = new double[2 * reach + 1];
        double sum = 0;
        for (int i = -reach; i <= reach; i++) {
            sum += weights[i + reach] = Math.exp(-i * i / (2 * sigma * sigma));
        }
        float[] across = new float[light.length];
        float[] both = new float[light.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double total = 0;
                for (int i = -reach; i <= reach; i++) {
                    total += weights[i + reach] * light[y * width + clamp(x + i, width)];
                }
                across[y * width + x] = (float) (total / sum);
            }
        }
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double total = 0;
                for (int i = -reach; i <= reach; i++) {
                    total += weights[i + reach] * across[clamp(y + i, height) * width + x];
                }
                both[y * width + x] = (float) (total / sum);
            }
        }
        return both;
    }

    private float[] moved(float[] light, double length) {
        int steps = (int) Math.ceil(length) + 1;
        double stepX = length * Math.cos(Math.toRadians(motionTowards)) / steps;
        double stepY = length * Math.sin(Math.toRadians(motionTowards)) / steps;
        float[] moved = new float[light.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double total = 0;
                for (int i = 0; i < steps; i++) {
                    double along = i - (steps - 1) / 2.0;
                    total += between(light, x + along * stepX, y + along * stepY);
                }
                moved[y * width + x] = (float) (total / steps);
            }
        }
        return moved;
    }

    private double between(float[] light, double x, double y) {
        double column = Math.max(0, Math.min(width - 1.001, x));
        double row = Math.max(0, Math.min(height - 1.001, y));
        int left = (int) column;
        int top = (int) row;
        int i = top * width + left;
        double upper = light[i] + (light[i + 1] - light[i]) * (column - left);
        double lower = light[i + width] + (light[i + width + 1] - light[i + width]) * (column - left);
        return upper + (lower - upper) * (row - top);
    }

    private static int clamp(int at, int size) {
        return Math.max(0, Math.min(size - 1, at));
    }

    /** The sensor's noise, which grows with the light; then the scale of a picture. A dark picture is brightened. */
    private Luma developed(float[] light, SplittableRandom chance) {
        double gain = 1 / Math.max(0.25, Math.min(1, exposure * 1.1));
        byte[] brightness = new byte[light.length];
        for (int i = 0; i < light.length; i++) {
            double grain = noise * Math.sqrt(0.1 + light[i] / 0.5 * 0.9) * chance.nextGaussian();
            double linear = Math.max(0, Math.min(1, (light[i] + grain) * gain));
            brightness[i] = (byte) Math.round(255 * Math.pow(linear, GAMMA));
        }
        return Luma.of(width, height, brightness);
    }

    /** Finds the spot of the card that a pixel sees. */
    private static final class View {

        private final double focus;
        private final double distance;
        private final double[] across;
        private final double[] down;
        private final double[] out;
        private final double lookX;
        private final double lookY;
        private final double bend;
        private final double bendX;
        private final double bendY;

        View(Camera camera, double lookX, double lookY) {
            this.lookX = lookX;
            this.lookY = lookY;
            focus = FOCUS * camera.width();
            distance = focus * CardPaper.MODULE / camera.pixels();
            bend = camera.bend();
            bendX = Math.cos(Math.toRadians(camera.bendTowards()));
            bendY = Math.sin(Math.toRadians(camera.bendTowards()));
            double tilt = Math.toRadians(camera.tilt());
            double towards = Math.toRadians(camera.tiltTowards());
            double roll = Math.toRadians(camera.roll());
            double[] axis = {Math.cos(towards), Math.sin(towards), 0};
            across = turned(new double[] {Math.cos(roll), Math.sin(roll), 0}, axis, tilt);
            down = turned(new double[] {-Math.sin(roll), Math.cos(roll), 0}, axis, tilt);
            out = turned(new double[] {0, 0, 1}, axis, tilt);
        }

        /** Rodrigues' formula. */
        private static double[] turned(double[] v, double[] axis, double angle) {
            double cos = Math.cos(angle);
            double sin = Math.sin(angle);
            double along = (v[0] * axis[0] + v[1] * axis[1] + v[2] * axis[2]) * (1 - cos);
            return new double[] {
                v[0] * cos + (axis[1] * v[2] - axis[2] * v[1]) * sin + axis[0] * along,
                v[1] * cos + (axis[2] * v[0] - axis[0] * v[2]) * sin + axis[1] * along,
                v[2] * cos + (axis[0] * v[1] - axis[1] * v[0]) * sin + axis[2] * along
            };
        }

        /** The card is a plane lifted by its curl: the ray meets it after a few steps. */
        void find(double x, double y, double[] spot) {
            double lift = 0;
            double towards = (x * out[0] + y * out[1] + focus * out[2]);
            for (int i = 0; i < (bend == 0 ? 1 : 4); i++) {
                double scale = (distance * out[2] + lift) / towards;
                double pointX = x * scale;
                double pointY = y * scale;
                double pointZ = focus * scale - distance;
                spot[0] = pointX * across[0] + pointY * across[1] + pointZ * across[2];
                spot[1] = pointX * down[0] + pointY * down[1] + pointZ * down[2];
                double from = spot[0] * bendX + spot[1] * bendY;
                lift = bend * from * from / 2;
            }
            spot[0] += lookX;
            spot[1] += lookY;
            if (towards <= 0) {
                spot[0] = -1;
            }
        }
    }
}
