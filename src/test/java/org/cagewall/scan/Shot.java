package org.cagewall.scan;

import java.util.SplittableRandom;

/** One picture's share of every cause: a little of each, and much of what it is to suffer from. One thread. */
final class Shot {

    private final SplittableRandom chance;

    private int width = 640;
    private int height = 480;
    private double pixels;
    private double tilt;
    private double roll;
    private double bend;
    private double blur;
    private double motion;
    private double exposure;
    private double noise;
    private double glare;
    private double glareRadius = 6;
    private double dirt;
    private CardPaper.Dirt where = CardPaper.Dirt.ANYWHERE;

    private Shot(SplittableRandom chance) {
        this.chance = chance;
    }

    /** Of a card, that is to suffer from this. */
    static Shot of(Wear wear, SplittableRandom chance) {
        Shot shot = new Shot(chance);
        shot.takeCard();
        shot.suffer(wear);
        return shot;
    }

    /** Of a code of so many modules on a side. */
    static Shot of(Oddity oddity, int side, SplittableRandom chance) {
        Shot shot = new Shot(chance);
        shot.takeCode();
        shot.suffer(oddity);
        shot.frame(side);
        if (oddity == Oddity.CLOSE) {
            shot.fill(side);
        }
        return shot;
    }

    private void takeCard() {
        pixels = from(4, 6);
        tilt = from(0, 10);
        roll = from(-8, 8);
        blur = from(0.1, 0.25);
        exposure = from(0.7, 1);
        noise = from(0.005, 0.02);
    }

    private void takeCode() {
        pixels = from(2.5, 6);
        tilt = from(0, 25);
        roll = chance.nextInt(3) == 0 ? from(-180, 180) : from(-20, 20);
        blur = from(0.1, 0.35);
        exposure = from(0.4, 1);
        noise = from(0.005, 0.02);
        glare = sometimes(0.15, from(0.1, 0.5));
    }

    private void suffer(Oddity oddity) {
        switch (oddity) {
            case TILT -> tilt = from(25, 60);
            case BLUR -> {
                blur = from(0.35, 0.8);
                motion = sometimes(0.5, from(0.3, 1.5));
            }
            case SMALL -> pixels = from(1.4, 2.5);
            case BENT -> bend = from(0.01, 0.04) * (chance.nextBoolean() ? 1 : -1);
            case HARD -> {
                pixels = from(1.8, 5);
                tilt = from(0, 50);
                blur = from(0.1, 0.6);
                bend = sometimes(0.3, from(0.004, 0.03));
                motion = sometimes(0.3, from(0.3, 1));
                exposure = from(0.1, 1);
                noise = from(0.01, 0.05);
                glare = sometimes(0.3, from(0.1, 0.8));
            }
            default -> {}
        }
    }

    /** A picture of 320 to 1280 pixels across, in which there is more than the code. */
    private void frame(int side) {
        pixels = Math.min(pixels, 900.0 / side);
        width = (int) Math.max(320, Math.min(1280, side * pixels * from(1.5, 4)));
        height = width * 3 / 4;
    }

    private void fill(int side) {
        width = new int[] {640, 1000, 1280}[chance.nextInt(3)];
        height = width * 3 / 4;
        pixels = height * from(0.75, 0.97) / side;
        blur = from(0.05, 0.15);
        tilt = from(0, 12);
        roll = from(-10, 10);
    }

    private void suffer(Wear wear) {
        switch (wear) {
            case BLUR -> blur = from(0.3, 1.1);
            case TILT -> tilt = from(15, 62);
            case ROLL -> {
                roll = from(-180, 180);
                tilt = from(0, 25);
            }
            case DIRT -> dirt = from(0.01, 0.2);
            case DIRT_OFF_FINDERS -> {
                dirt = from(0.03, 0.35);
                where = CardPaper.Dirt.OFF_FINDERS;
            }
            case LOW_LIGHT -> {
                exposure = from(0.04, 0.35);
                noise = from(0.015, 0.08);
            }
            case GLARE -> {
                glare = from(0.2, 1.2);
                glareRadius = from(2, 6);
            }
            case CURL -> bend = 1 / from(8, 60) * (chance.nextBoolean() ? 1 : -1);
            case DISTANCE -> pixels = from(1.3, 3.5);
            case MOTION -> motion = from(0.6, 3);
            case FILTHY -> dirt = from(0.2, 0.7);
            case MIXED -> mixed();
            case HARD -> hard();
            default -> throw new IllegalArgumentException(wear.name());
        }
    }

    private void mixed() {
        pixels = from(2.5, 6);
        tilt = from(0, 30);
        roll = from(-25, 25);
        blur = from(0.1, 0.45);
        motion = sometimes(0.3, from(0.2, 0.9));
        dirt = sometimes(0.4, from(0.005, 0.06));
        bend = sometimes(0.3, from(0.002, 0.012));
        glare = sometimes(0.2, from(0.1, 0.5));
        exposure = from(0.3, 1);
        noise = from(0.01, 0.03);
    }

    private void hard() {
        width = 1280;
        height = 720;
        pixels = from(2.2, 6);
        tilt = from(0, 45);
        roll = from(-40, 40);
        blur = from(0.1, 0.55);
        motion = sometimes(0.35, from(0.3, 1.2));
        dirt = sometimes(0.5, from(0.005, 0.09));
        bend = sometimes(0.4, from(0.002, 0.02));
        glare = sometimes(0.2, from(0.1, 0.7));
        exposure = from(0.15, 1);
        noise = from(0.01, 0.045);
    }

    void dirty(CardPaper paper) {
        if (dirt > 0) {
            paper.soil(dirt, where, chance);
        }
    }

    /** @param module of the symbol, in millimetres, in which pixels, blur and motion are counted */
    Camera camera(double module) {
        double usual = module / CardPaper.MODULE;
        return new Camera(
                width,
                height,
                pixels / usual,
                tilt,
                from(0, 360),
                roll,
                bend,
                from(0, 180),
                blur * usual,
                motion * usual,
                from(0, 180),
                exposure,
                noise,
                glare,
                glareRadius);
    }

    private double sometimes(double share, double value) {
        return chance.nextDouble() < share ? value : 0;
    }

    private double from(double least, double most) {
        return least + (most - least) * chance.nextDouble();
    }
}
