package tuttarco.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;

/**
 * Tells once what many elements of a drawn SVG have in common: words of the same look become one group over all else,
 * as nothing in a chart covers its words, and straight lines that follow each other become one path.
 */
final class SvgGathering {
    private static final List<String> ENDS = List.of("x1", "y1", "x2", "y2");

    private SvgGathering() {}

    static void gather(Element root) {
        gatherWords(root);
        for (Element group : all(root, "g")) {
            runsOfLines(group).forEach(SvgGathering::join);
            if (!group.hasChildNodes()) {
                group.getParentNode().removeChild(group);
            }
        }
    }

    private static void gatherWords(Element root) {
        Map<Map<String, String>, Element> groups = new LinkedHashMap<>();
        for (Element words : all(root, "text")) {
            if (!words.hasAttribute("transform")) {
                Map<String, String> look = attributes((Element) words.getParentNode());
                look.putAll(attributes(words));
                look.keySet().removeIf(name -> name.startsWith("stroke-"));
                look.keySet().removeAll(List.of("x", "y", "xml:space"));
                look.keySet().forEach(words::removeAttribute);
                groups.computeIfAbsent(look, l -> element(root, "g", l)).appendChild(words);
            }
        }
        groups.values().forEach(root::appendChild);
    }

    /** Lines of the same look with nothing between them. */
    private static List<List<Element>> runsOfLines(Element group) {
        List<List<Element>> runs = new ArrayList<>();
        Map<String, String> before = Map.of();
        NodeList children = group.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            Element child = (Element) children.item(i);
            Map<String, String> look = child.getTagName().equals("line") ? look(child) : Map.of();
            if (!look.isEmpty()) {
                if (!look.equals(before)) {
                    runs.add(new ArrayList<>());
                }
                runs.get(runs.size() - 1).add(child);
            }
            before = look;
        }
        return runs;
    }

    private static void join(List<Element> lines) {
        Path2D path = new Path2D.Double();
        for (Element line : lines) {
            double[] px = ENDS.stream()
                    .mapToDouble(end -> Double.parseDouble(line.getAttribute(end)))
                    .toArray();
            path.append(new Line2D.Double(px[0], px[1], px[2], px[3]), false);
        }
        Element first = lines.get(0);
        Element joined = element(first, "path", look(first));
        joined.setAttribute("d", PathText.of(path));
        first.getParentNode().insertBefore(joined, first);
        lines.forEach(line -> line.getParentNode().removeChild(line));
    }

    private static Map<String, String> look(Element line) {
        Map<String, String> look = attributes(line);
        look.keySet().removeAll(ENDS);
        return look;
    }

    private static Map<String, String> attributes(Element element) {
        NamedNodeMap attributes = element.getAttributes();
        Map<String, String> values = new TreeMap<>();
        for (int i = 0; i < attributes.getLength(); i++) {
            values.put(attributes.item(i).getNodeName(), attributes.item(i).getNodeValue());
        }
        return values;
    }

    private static Element element(Element beside, String name, Map<String, String> attributes) {
        Element element = beside.getOwnerDocument().createElementNS(SvgTidy.SVG_NS, name);
        attributes.forEach(element::setAttribute);
        return element;
    }

    private static List<Element> all(Element root, String name) {
        NodeList live = root.getElementsByTagName(name);
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < live.getLength(); i++) {
            all.add((Element) live.item(i));
        }
        return all;
    }
}
