/**
 * The page's process: HTTP, sign-in, pages, answers about lots and varieties, what is counted. It
 * has no hand on any part of the shed, and never gets one: what it has of control is what control
 * tells, and a way to say "look at the journal now".
 */
@NullMarked
package rindward.controller.page;

import org.jspecify.annotations.NullMarked;
