/** What decides and remembers. Holds no classes itself; the packages below stand in one order. */
@NullMarked
package rindward.controller;

import org.jspecify.annotations.NullMarked;
