/**
 * Which spring for which key, from a measured old one: how stiff it is, what a change of wire or length does in per
 * cent, which wires lie near, which the keys usually have.
 *
 * <p>Reads the entries of springs and the standard wire tables. A needle spring is taken as a straight round cantilever,
 * a flat one as a straight strip. Not here: which drawer such a spring lies in (the fit of lots), and how a size is
 * named in other gauges. Screens and commands may ask.
 */
@NullMarked
package hornbook.catalogue.spring;

import org.jspecify.annotations.NullMarked;
