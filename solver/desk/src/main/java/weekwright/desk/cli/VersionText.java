package weekwright.desk.cli;

import picocli.CommandLine.IVersionProvider;

/** The version, as it is written in the jar. */
final class VersionText implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = VersionText.class.getPackage().getImplementationVersion();
        return new String[] {"weekwright " + (version == null ? "(not packed in a jar)" : version)};
    }
}
