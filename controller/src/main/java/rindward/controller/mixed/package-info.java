/**
 * Linear mixed models: a response that is a sum of fixed effects, of effects of groups (crossed or
 * nested) that are drawn around zero with a spread each, and of a rest. By REML, or with priors on
 * the spreads and integrated over them. Arithmetic only; what the groups are is nothing to it.
 */
@NullMarked
package rindward.controller.mixed;

import org.jspecify.annotations.NullMarked;
