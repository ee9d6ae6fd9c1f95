package tuttarco.window;

import java.awt.image.BufferedImage;

/**
 * How people see a picture who lack one kind of cone. Matrices for linear red, green and blue: G. M. Machado, M. M. Oliveira, L.
 * A. F. Fernandes, A physiologically-based model for simulation of color vision deficiency, IEEE Trans. Vis. Comput. Graph. 15
 * (2009) 1291, severity 1.0; from memory.
 */
enum ColourVision {
    PROTANOPIA(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
    DEUTERANOPIA(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    TRITANOPIA(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

    private final double[] matrix;

    ColourVision(double... matrix) {
        this.matrix = matrix;
    }

    /** What a row of the matrix makes of grey: 1 where grey stays grey. */
    double rowSum(int row) {
        return matrix[3 * row] + matrix[3 * row + 1] + matrix[3 * row + 2];
    }

    BufferedImage of(BufferedImage picture) {
        BufferedImage seen = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                int rgb = picture.getRGB(x, y);
                double[] light = {linear(rgb >> 16 & 0xFF), linear(rgb >> 8 & 0xFF), linear(rgb & 0xFF)};
                int out = 0;
                for (int row = 0; row < 3; row++) {
                    double sum = 0;
                    for (int column = 0; column < 3; column++) {
                        sum += matrix[3 * row + column] * light[column];
                    }
                    out = out << 8 | coded(sum);
                }
                seen.setRGB(x, y, out);
            }
        }
        return seen;
    }

    /** Relative luminance, 0 to 1: IEC 61966-2-1, ITU-R BT.709. */
    static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xFF) + 0.7152 * linear(rgb >> 8 & 0xFF) + 0.0722 * linear(rgb & 0xFF);
    }

    private static double linear(int coded) {
        double c = coded / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static int coded(double linear) {
        double l = Math.max(0, Math.min(1, linear));
        return (int) Math.round(255 * (l <= 0.0031308 ? 12.92 * l : 1.055 * Math.pow(l, 1 / 2.4) - 0.055));
    }
}
