package org.loomwright.api;

import jakarta.servlet.http.HttpServletRequest;

import org.loomwright.app.Electrics;
import org.loomwright.app.WiredLoom;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.finder.Sighting;
import org.loomwright.exchange.ColourReportWriter;
import org.loomwright.exchange.ElectricalReportWriter;
import org.loomwright.exchange.FoundWiresWriter;
import org.loomwright.exchange.OpenWriter;
import org.loomwright.exchange.PeriodWriter;
import org.loomwright.exchange.ReadingsWriter;
import org.loomwright.exchange.ScenarioJson;
import org.springframework.stereotype.Component;

import tools.jackson.databind.JsonNode;

import java.io.IOException;

/** What looms and specifications answer alike about their electrical side. */
@Component
class ElectricAnswers {

    private final Electrics electrics;
    private final Catalogue catalogue;
    private final BodyReader bodies;

    ElectricAnswers(Electrics electrics, Catalogue catalogue, BodyReader bodies) {
        this.catalogue = catalogue;
        this.electrics = electrics;
        this.bodies = bodies;
    }

    JsonNode scenarios(WiredLoom wired) {
        return ReadingsWriter.scenarios(electrics.scenarios(wired));
    }

    JsonNode report(WiredLoom wired, boolean changes) {
        return ElectricalReportWriter.write(
                electrics.report(wired, changes ? Changes.SOUGHT : Changes.LEFT_OUT));
    }

    JsonNode colours(WiredLoom wired) {
        return new ColourReportWriter(wired.loom(), catalogue).write(electrics.colours(wired));
    }

    JsonNode find(WiredLoom wired, Sighting sighting) {
        return FoundWiresWriter.write(
                InvalidRequestException.orThrow(electrics.find(wired, sighting)));
    }

    JsonNode period(WiredLoom wired) {
        return PeriodWriter.write(electrics.period(wired));
    }

    JsonNode open(WiredLoom wired) {
        return OpenWriter.write(electrics.open(wired));
    }

    JsonNode readings(WiredLoom one, WiredLoom other, HttpServletRequest request)
            throws IOException {
        return ReadingsWriter.write(
                InvalidRequestException.orThrow(
                        ScenarioJson.read(bodies.read(request).json(), "")
                                .then(scenario -> electrics.readings(one, other, scenario))));
    }

    JsonNode readings(WiredLoom wired, HttpServletRequest request) throws IOException {
        Readings readings =
                InvalidRequestException.orThrow(
                        ScenarioJson.read(bodies.read(request).json(), "")
                                .then(scenario -> electrics.readings(wired, scenario)));
        return ReadingsWriter.write(readings);
    }
}
