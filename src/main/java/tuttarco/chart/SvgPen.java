package tuttarco.chart;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGShape;
import org.w3c.dom.Element;

/**
 * Draws SVG that is short: paths by {@link PathText}, and outlines that repeat as markers at the corners of a line that
 * is not drawn itself ({@link Stamps}).
 */
final class SvgPen extends SVGGraphics2D {
    /** Neither stroked nor filled. */
    private static final short NOT_DRAWN = 0;

    /** Ids of the markers made so far by outline and colour. */
    private final Map<String, String> markers = new HashMap<>();

    SvgPen(SVGGeneratorContext context) {
        super(context, false);
        shapeConverter = new ShortPaths(context);
    }

    /** A filled path's outlines must not overlap, as those of the charts don't. */
    @Override
    public void fill(Shape shape) {
        if (shape instanceof Path2D path && getPaint() instanceof Color colour) {
            Stamps stamps = Stamps.of(path);
            for (Map.Entry<String, List<Point2D>> stamp : stamps.places().entrySet()) {
                stamp(stamp.getKey(), stamp.getValue(), colour);
            }
            super.fill(stamps.others());
        } else {
            super.fill(shape);
        }
    }

    private void stamp(String outline, List<Point2D> places, Color colour) {
        Element sign = element("path");
        sign.setAttribute("d", outline);
        sign.setAttribute("fill", "rgb(" + colour.getRed() + "," + colour.getGreen() + "," + colour.getBlue() + ")");
        sign.setAttribute("stroke", "none");
        String url = "url(#" + markers.computeIfAbsent(outline + colour.getRGB(), key -> marker(sign)) + ")";
        Element line = element("path");
        line.setAttribute("d", PathText.through(places));
        line.setAttribute("marker-start", url);
        line.setAttribute("marker-mid", url);
        line.setAttribute("marker-end", url);
        getDOMGroupManager().addElement(line, NOT_DRAWN);
    }

    /** Keeps a sign among the definitions; returns its id. */
    private String marker(Element sign) {
        String id = getGeneratorContext().getIDGenerator().generateID("sign");
        Element marker = element("marker");
        marker.setAttribute("id", id);
        marker.setAttribute("markerUnits", "userSpaceOnUse");
        marker.setAttribute("overflow", "visible");
        marker.appendChild(sign);
        getDOMTreeManager().addOtherDef(marker);
        return id;
    }

    private Element element(String name) {
        return getDOMFactory().createElementNS(SvgTidy.SVG_NS, name);
    }

    private static final class ShortPaths extends SVGShape {
        ShortPaths(SVGGeneratorContext context) {
            super(context);
        }

        @Override
        public Element toSVG(Shape shape) {
            if (!(shape instanceof Path2D path)) {
                return super.toSVG(shape);
            }
            String text = PathText.of(path);
            if (text.isEmpty()) {
                return null;
            }
            Element element = generatorContext.getDOMFactory().createElementNS(SvgTidy.SVG_NS, "path");
            element.setAttribute("d", text);
            if (path.getWindingRule() == Path2D.WIND_EVEN_ODD) {
                element.setAttribute("fill-rule", "evenodd");
            }
            return element;
        }
    }
}
