package tuttarco.chart;

import org.apache.batik.svggen.SVGIDGenerator;

/** Ids that begin with the chart's key, so that several charts can share a page, and that are the same at each run. */
final class KeyedIds extends SVGIDGenerator {
    private final String key;
    private int next = 1;

    KeyedIds(String key) {
        this.key = key;
    }

    @Override
    public String generateID(String prefix) {
        return key + "-" + prefix + next++;
    }
}
