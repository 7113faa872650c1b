/** Sign-in, personal tokens, users and the audit trail as pages. */
@NullMarked
package org.ohmstead.access.web;

import org.jspecify.annotations.NullMarked;
