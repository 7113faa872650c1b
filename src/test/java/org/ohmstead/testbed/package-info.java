/** A test bed for the forecast: invented estates with documented truth, rivals, and a score. */
package org.ohmstead.testbed;
