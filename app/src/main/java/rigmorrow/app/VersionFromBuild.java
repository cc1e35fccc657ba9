package rigmorrow.app;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar. */
final class VersionFromBuild implements IVersionProvider {

  private static final String RESOURCE = "version.properties";

  @Override
  public String[] getVersion() throws IOException {
    Properties properties = new Properties();
    try (InputStream stream = VersionFromBuild.class.getResourceAsStream(RESOURCE)) {
      if (stream == null) {
        throw new IOException("The resource " + RESOURCE + " is missing from the build");
      }
      properties.load(stream);
    }
    return new String[] {"rigmorrow " + properties.getProperty("version")};
  }
}
