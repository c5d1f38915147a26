// SPDX-License-Identifier: Apache-2.0
/**
 * The program that negotiates a fuselage from a brief: a folder with the report and the pictures.
 *
 * <p>A brief names the family of the body, the air, what must fit inside, and what else has a say; {@code FuselageBrief}
 * is what is read from it, {@code BodyStudy} what follows, {@code FuselageReport} and {@code FuselageSheet} show it. Three
 * fuselages come built in, a hall glider's, a survey aeroplane's and a two-seat tourer's, and a brief that cannot be
 * met.
 */
@NullMarked
package io.github.wingwright.examples.fuselage;

import org.jspecify.annotations.NullMarked;
