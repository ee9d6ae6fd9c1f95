package tuttarco.cli;

import picocli.CommandLine.IVersionProvider;

/** The program's version, from its jar. */
final class Version implements IVersionProvider {
    static String number() {
        String packaged = Version.class.getPackage().getImplementationVersion();
        return packaged == null ? "development" : packaged;
    }

    @Override
    public String[] getVersion() {
        return new String[] {"tuttarco " + number()};
    }
}
