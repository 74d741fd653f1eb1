/**
 * The settings file and the crop guide, from TOML straight into domain types: no second set of
 * classes in between. Whatever is wrong is collected, never just the first, and each problem is one
 * sentence with its file, line and key. The only package that knows TOML.
 */
@NullMarked
package rindward.controller.settings;

import org.jspecify.annotations.NullMarked;
