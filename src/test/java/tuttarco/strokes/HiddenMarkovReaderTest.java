package tuttarco.strokes;

class HiddenMarkovReaderTest extends StrokeReaderContract {
    @Override
    StrokeReader reader() {
        return new HiddenMarkovReader(HiddenMarkovReader.Settings.DEFAULT);
    }
}
