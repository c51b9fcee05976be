package org.loomwright.web;

import org.loomwright.app.Looms;
import org.loomwright.app.Specifications;
import org.loomwright.app.WorkOrders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The start page: what is here, with links to drawings, figures and job sheets. */
@Controller
class StartController {

    private static final int NEWEST = 20;

    private final Looms looms;
    private final Specifications specifications;
    private final WorkOrders workOrders;

    StartController(Looms looms, Specifications specifications, WorkOrders workOrders) {
        this.looms = looms;
        this.specifications = specifications;
        this.workOrders = workOrders;
    }

    @GetMapping("/")
    String start(Model model) {
        model.addAttribute("newest", NEWEST);
        model.addAttribute("looms", looms.list(null, NEWEST).items());
        model.addAttribute("specifications", specifications.list(null, NEWEST).items());
        model.addAttribute("workOrders", workOrders.list(null, null, NEWEST).items());
        return "start";
    }
}
