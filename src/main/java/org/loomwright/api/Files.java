package org.loomwright.api;

import org.loomwright.document.scene.Scene;
import org.loomwright.document.svg.SvgWriter;
import org.loomwright.exchange.CanonicalJson;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

import java.nio.charset.StandardCharsets;

/** Answers that are not JSON. */
final class Files {

    static final String SVG = "image/svg+xml";

    private Files() {}

    /**
     * @param scene a picture
     * @return the picture as SVG
     */
    static ResponseEntity<byte[]> svg(Scene scene) {
        byte[] svg = SvgWriter.write(scene);
        return ResponseEntity.ok()
                .eTag(EntityTags.weak(CanonicalJson.sha256(svg)))
                .contentType(MediaType.parseMediaType(SVG))
                .body(svg);
    }

    /**
     * @param pdf a finished PDF
     * @param name file name to suggest
     * @return the PDF, to be shown in the browser
     */
    static ResponseEntity<byte[]> pdf(byte[] pdf, String name) {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename(name, StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .body(pdf);
    }
}
