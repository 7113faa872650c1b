package org.ohmstead.intake;

import java.util.List;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.file.SurveySheet;

/**
 * What handing a file in by a map would come to.
 *
 * @param fits whether the file has every title that the map names
 * @param sheets as they would be read
 * @param remarks of the first survey, by the very stages of a real upload
 */
public record MapPreview(boolean fits, List<SurveySheet> sheets, UploadState state, List<Remark> remarks) {}
