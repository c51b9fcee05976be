package org.loomwright.document.pdf;

import java.time.LocalDate;

/**
 * What a PDF file says about itself.
 *
 * @param title shown in the bar of the reader's window
 * @param author who made it
 * @param subject what it is about
 * @param keywords words to find it by
 * @param language language tag, for example {@code en-GB}
 * @param preparedOn its date; the file carries no other
 * @param identity a text that names the content; the file's identifier is derived from it
 */
public record DocumentFacts(
        String title,
        String author,
        String subject,
        String keywords,
        String language,
        LocalDate preparedOn,
        String identity) {}
