// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/** The main program. */
public final class DesignProgram {
    private DesignProgram() {
    }

    /**
     * Says which version this is.
     *
     * @param arguments none
     * @throws IOException if the build's own description cannot be read
     */
    public static void main(String[] arguments) throws IOException {
        System.out.println("Wingwright " + version());
    }

    static String version() throws IOException {
        Properties build = new Properties();
        try (InputStream in = DesignProgram.class.getResourceAsStream("build.properties")) {
            if (in == null) {
                throw new IOException("build.properties must be on the class path beside " + DesignProgram.class.getName());
            }
            build.load(in);
        }
        return build.getProperty("version", "of unknown version");
    }
}
