package fusetale.cli;

import picocli.CommandLine.IVersionProvider;

/** The version the jar was built as. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String built = Version.class.getPackage().getImplementationVersion();
        return new String[] {"Fusetale " + (built == null ? "(not from its jar)" : built)};
    }
}
