package org.ohmstead.intake;

/**
 * The answer to a file handed in, given only after everything in it was committed.
 *
 * @param isNew false when the same bytes had come under this name before, and this is their first receipt again
 */
public record Receipt(UploadView upload, boolean isNew) {}
