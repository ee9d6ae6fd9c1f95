package tuttarco.musicxml;

/** Small MusicXML documents. */
final class XmlParts {
    private XmlParts() {}

    static String document(String measures) {
        return """
                <?xml version="1.0" encoding="UTF-8"?>
                <!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "partwise.dtd">
                <score-partwise version="4.0">
                  <part-list><score-part id="P1"><part-name>Inner Voices</part-name></score-part></part-list>
                  <part id="P1">%s</part>
                </score-partwise>
                """.formatted(measures);
    }

    /** A first bar with two divisions a quarter note. */
    static String first(String metre, String notes) {
        String[] figures = metre.split("/", -1);
        return "<measure number=\"1\"><attributes><divisions>2</divisions><time><beats>" + figures[0]
                + "</beats><beat-type>" + figures[1] + "</beat-type></time></attributes>" + notes + "</measure>";
    }

    static String bar(int number, String notes) {
        return "<measure number=\"" + number + "\">" + notes + "</measure>";
    }

    /** A note with something in its notations. */
    static String note(int divisions, String notations) {
        return "<note><pitch><step>A</step><octave>4</octave></pitch><duration>" + divisions
                + "</duration><voice>1</voice><notations>" + notations + "</notations></note>";
    }

    static String note(int divisions) {
        return note(divisions, "");
    }

    static String rest(int divisions) {
        return "<note><rest/><duration>" + divisions + "</duration><voice>1</voice></note>";
    }

    static String down() {
        return "<technical><down-bow/></technical>";
    }

    static String up() {
        return "<technical><up-bow/></technical>";
    }

    static String slur(String type, int number) {
        return "<slur type=\"" + type + "\" number=\"" + number + "\"/>";
    }
}
