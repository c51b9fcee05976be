package org.loomwright.app;

/**
 * What a specification says before it is frozen.
 *
 * @param title what it is called
 * @param stock the loom that it starts from
 * @param amendmentsJson canonical JSON list of the amendments
 * @param settingsJson canonical JSON object of the settings to calculate with
 * @param acceptedJson canonical JSON list of the findings that the customer accepts
 */
public record SpecificationDraft(
        String title,
        LoomContent stock,
        String amendmentsJson,
        String settingsJson,
        String acceptedJson) {}
