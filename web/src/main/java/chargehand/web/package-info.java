/** The shop's pages and JSON resources over HTTP: each calls a use case or a sum and shows what it says. */
@NullMarked
package chargehand.web;

import org.jspecify.annotations.NullMarked;
