package org.loomwright.api;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import java.util.List;

/** What was sent is wrong, with every reason. */
final class InvalidRequestException extends RuntimeException {

    private final List<Finding> faults;

    InvalidRequestException(List<Finding> faults) {
        super(faults.size() + " faults in a request");
        this.faults = List.copyOf(faults);
    }

    /** One wrong parameter or header. */
    static InvalidRequestException of(String code, String text) {
        return new InvalidRequestException(
                List.of(Finding.fault(code, new Subject(ThingKind.REQUEST, "", ""), text)));
    }

    static <T> T orThrow(Outcome<T> outcome) {
        return outcome.orElseThrow(InvalidRequestException::new);
    }

    List<Finding> faults() {
        return faults;
    }

    /** Whether it could not even be read as JSON. */
    boolean isMalformed() {
        return faults.stream().anyMatch(fault -> fault.code().equals("json.malformed"));
    }
}
