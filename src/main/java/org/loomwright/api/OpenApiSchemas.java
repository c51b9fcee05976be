package org.loomwright.api;

/** Names of the schemas that stand in files under {@code shared} or are written by hand, as the OpenAPI description refers to them. */
final class OpenApiSchemas {

    private static final String PLACE = "#/components/schemas/";

    static final String LOOM = PLACE + "Loom";
    static final String AMENDMENTS = PLACE + "Amendments";
    static final String ACCEPTED = PLACE + "Accepted";
    static final String SETTINGS = PLACE + "Settings";
    static final String NEW_SPECIFICATION = PLACE + "NewSpecification";
    static final String SPECIFICATION = PLACE + "Specification";
    static final String FREEZE = PLACE + "Freeze";
    static final String NEW_WORK_ORDER = PLACE + "NewWorkOrder";
    static final String NEW_MOVE = PLACE + "NewMove";
    static final String ANALYSIS = PLACE + "Analysis";
    static final String CHANGE_ANALYSIS = PLACE + "ChangeAnalysis";
    static final String DIFFERENCE = PLACE + "Difference";
    static final String REVISION_DOCUMENT = PLACE + "RevisionDocument";
    static final String SCENARIO = PLACE + "Scenario";
    static final String SCENARIOS = PLACE + "Scenarios";
    static final String READINGS = PLACE + "Readings";
    static final String OPEN_QUESTIONS = PLACE + "OpenQuestions";
    static final String ELECTRICAL_REPORT = PLACE + "ElectricalReport";
    static final String COLOUR_REPORT = PLACE + "ColourReport";
    static final String FOUND_WIRES = PLACE + "FoundWires";
    static final String PERIOD_REPORT = PLACE + "PeriodReport";
    static final String KITS = PLACE + "Kits";
    static final String KIT = PLACE + "Kit";
    static final String KIT_ANSWERS = PLACE + "KitAnswers";
    static final String KIT_PLAN = PLACE + "KitPlan";
    static final String PROBLEM = PLACE + "Problem";

    /** The type of a text that may be lacking. */
    static final String TEXT = "string";

    static final String NULL = "null";

    private OpenApiSchemas() {}
}
