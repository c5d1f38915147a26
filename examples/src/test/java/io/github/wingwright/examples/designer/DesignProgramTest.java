// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class DesignProgramTest {
    @Test
    void knows_the_version_it_was_built_as() throws IOException {
        assertThat(DesignProgram.version()).matches("\\d+\\.\\d+\\.\\d+(-SNAPSHOT)?");
    }
}
