package org.loomwright.api;

import io.swagger.v3.oas.annotations.tags.Tag;

import org.loomwright.app.Electrics;
import org.loomwright.app.WiredLoom;
import org.loomwright.app.WiredLooms;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

import java.util.UUID;

/** The electrical side of a recorded loom. */
@RestController
@Tag(
        name = "Electrics of looms",
        description = "Currents, voltages, colours and what follows from them")
@RequestMapping(path = "/api/looms/{id}", produces = MediaType.APPLICATION_JSON_VALUE)
class LoomElectricsController extends ElectricsController {

    private final WiredLooms looms;

    LoomElectricsController(WiredLooms looms, Electrics electrics, BodyReader bodies) {
        super(looms, electrics, bodies);
        this.looms = looms;
    }

    @Override
    String of() {
        return "OfLoom";
    }

    @Override
    WiredLoom wired(UUID id) {
        return looms.ofLoom(id);
    }
}
