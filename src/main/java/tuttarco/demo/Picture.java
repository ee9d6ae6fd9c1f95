package tuttarco.demo;

/**
 * The picture a scene is rendered to.
 *
 * @param framesPerS frames a second, on average where the rate varies
 * @param varying whether the time from frame to frame varies, as phones let it
 * @param fill share of the picture's height and width the section may fill, 0 to 1
 * @param mirrored whether the finished picture is flipped left to right, as front cameras do
 */
record Picture(
        int widthPx, int heightPx, double framesPerS, boolean varying, int kbitPerS, double fill, boolean mirrored) {
    Picture {
        if (widthPx < 32 || heightPx < 32 || widthPx > 4096 || heightPx > 4096) {
            throw new IllegalArgumentException(
                    "a picture has 32 to 4096 pixels a side, not " + widthPx + "x" + heightPx);
        }
        if (widthPx % 2 != 0 || heightPx % 2 != 0) {
            throw new IllegalArgumentException("an encoded picture has even sides, not " + widthPx + "x" + heightPx);
        }
        if (!(framesPerS >= 1 && framesPerS <= 240)) {
            throw new IllegalArgumentException("a clip has 1 to 240 frames a second, not " + framesPerS);
        }
        if (kbitPerS < 20) {
            throw new IllegalArgumentException("a clip has at least 20 kbit a second, not " + kbitPerS);
        }
        if (!(fill > 0 && fill <= 1)) {
            throw new IllegalArgumentException("a section fills a share of the picture, not " + fill);
        }
    }

    static Picture of(int widthPx, int heightPx) {
        return new Picture(widthPx, heightPx, 25, false, widthPx * heightPx / 200, 1, false);
    }

    Picture at(double newFramesPerS) {
        return new Picture(widthPx, heightPx, newFramesPerS, varying, kbitPerS, fill, mirrored);
    }

    Picture varyingRate() {
        return new Picture(widthPx, heightPx, framesPerS, true, kbitPerS, fill, mirrored);
    }

    Picture bitrate(int newKbitPerS) {
        return new Picture(widthPx, heightPx, framesPerS, varying, newKbitPerS, fill, mirrored);
    }

    Picture filled(double newFill) {
        return new Picture(widthPx, heightPx, framesPerS, varying, kbitPerS, newFill, mirrored);
    }

    Picture flipped() {
        return new Picture(widthPx, heightPx, framesPerS, varying, kbitPerS, fill, !mirrored);
    }
}
