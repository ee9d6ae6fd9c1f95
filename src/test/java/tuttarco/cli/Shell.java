package tuttarco.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.List;

/** Runs a command line as the shell would, and keeps what it said. */
record Shell(int code, String out, String err) {
    static Shell run(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = Arrays.stream(args).map(Object::toString).toArray(String[]::new);
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Shell(code, out.toString(), err.toString());
    }

    List<String> errLines() {
        return err.lines().toList();
    }
}
