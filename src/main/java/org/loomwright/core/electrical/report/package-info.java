/**
 * What is to be said about the electrical side of one loom and its additions, from every check there is? {@link
 * org.loomwright.core.electrical.report.ElectricalReports} asks them all and {@link
 * org.loomwright.core.electrical.report.ElectricalReport} is the answer.
 */
@NullMarked
package org.loomwright.core.electrical.report;

import org.jspecify.annotations.NullMarked;
