package org.loomwright.api;

import jakarta.servlet.http.HttpServletRequest;

import org.loomwright.app.Electrics;
import org.loomwright.app.Wiring;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.exchange.OpenWriter;
import org.loomwright.exchange.ReadingsWriter;
import org.loomwright.exchange.ScenarioJson;
import org.springframework.stereotype.Component;

import tools.jackson.databind.JsonNode;

import java.io.IOException;

/** What looms and specifications answer alike about their electrical side. */
@Component
class ElectricAnswers {

    private final Electrics electrics;
    private final BodyReader bodies;

    ElectricAnswers(Electrics electrics, BodyReader bodies) {
        this.electrics = electrics;
        this.bodies = bodies;
    }

    JsonNode scenarios(Wiring wiring) {
        return ReadingsWriter.scenarios(electrics.scenarios(wiring));
    }

    JsonNode open(Wiring wiring) {
        return OpenWriter.write(electrics.open(wiring));
    }

    JsonNode readings(Wiring wiring, HttpServletRequest request) throws IOException {
        Readings readings =
                InvalidRequestException.orThrow(
                        ScenarioJson.read(bodies.read(request).json(), "")
                                .then(scenario -> electrics.readings(wiring, scenario)));
        return ReadingsWriter.write(readings);
    }
}
