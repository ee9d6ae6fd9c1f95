package tuttarco.faces;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * Makes faces unknowable: each region is taken apart into a few cells, of which only the mean colours are kept, smoothed, and
 * drawn again without edges. So few numbers are left that no face can be made of them again; and as the cells go along
 * with the region, many pictures tell no more than one.
 */
public final class FaceBlur {
    /** Cells across a region's shorter side: a head within takes about four (chosen). */
    private static final int CELLS = 6;

    /** Along the longer side never more than this. */
    private static final int MOST_CELLS = 24;

    private FaceBlur() {}

    /**
     * Blurs regions of a picture.
     *
     * @param picture {@link BufferedImage#TYPE_INT_RGB}
     * @param regions in pixels of the clip
     * @param toPicture from pixels of the clip to those of the picture
     */
    public static void over(BufferedImage picture, List<Shape> regions, AffineTransform toPicture) {
        Graphics2D g = picture.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            for (Shape region : regions) {
                blur(g, picture, toPicture.createTransformedShape(region));
            }
        } finally {
            g.dispose();
        }
    }

    private static void blur(Graphics2D g, BufferedImage picture, Shape region) {
        Rectangle box = region.getBounds().intersection(new Rectangle(picture.getWidth(), picture.getHeight()));
        if (box.isEmpty()) {
            return;
        }
        Rectangle whole = region.getBounds();
        double cellPx = Math.max(1, Math.min(whole.width, whole.height) / (double) CELLS);
        int columns = (int) Math.max(1, Math.min(MOST_CELLS, Math.round(box.width / cellPx)));
        int rows = (int) Math.max(1, Math.min(MOST_CELLS, Math.round(box.height / cellPx)));
        BufferedImage cells = smoothed(means(picture, box, columns, rows));
        g.setClip(region);
        g.drawImage(cells, box.x, box.y, box.width, box.height, null);
        g.setClip(null);
    }

    private static BufferedImage means(BufferedImage picture, Rectangle box, int columns, int rows) {
        BufferedImage cells = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
        for (int row = 0; row < rows; row++) {
            int top = box.y + row * box.height / rows;
            int bottom = Math.max(top + 1, box.y + (row + 1) * box.height / rows);
            for (int column = 0; column < columns; column++) {
                int left = box.x + column * box.width / columns;
                int right = Math.max(left + 1, box.x + (column + 1) * box.width / columns);
                int[] pixels = picture.getRGB(left, top, right - left, bottom - top, null, 0, right - left);
                cells.setRGB(column, row, mean(pixels));
            }
        }
        return cells;
    }

    private static int mean(int[] pixels) {
        long red = 0;
        long green = 0;
        long blue = 0;
        for (int pixel : pixels) {
            red += pixel >> 16 & 0xFF;
            green += pixel >> 8 & 0xFF;
            blue += pixel & 0xFF;
        }
        return (int) (red / pixels.length) << 16 | (int) (green / pixels.length) << 8 | (int) (blue / pixels.length);
    }

    /** Each cell with its neighbours by binomial weights, 1 2 1 both ways: nearly a Gaussian. */
    private static BufferedImage smoothed(BufferedImage cells) {
        BufferedImage smooth = new BufferedImage(cells.getWidth(), cells.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int row = 0; row < cells.getHeight(); row++) {
            for (int column = 0; column < cells.getWidth(); column++) {
                int[] around = new int[16];
                int count = 0;
                for (int down : new int[] {-1, 0, 0, 1}) {
                    for (int right : new int[] {-1, 0, 0, 1}) {
                        int x = Math.max(0, Math.min(cells.getWidth() - 1, column + right));
                        int y = Math.max(0, Math.min(cells.getHeight() - 1, row + down));
                        around[count++] = cells.getRGB(x, y);
                    }
                }
                smooth.setRGB(column, row, mean(around));
            }
        }
        return smooth;
    }
}
