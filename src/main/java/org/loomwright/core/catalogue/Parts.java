package org.loomwright.core.catalogue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What is fitted to a loom and what hangs on it: joints, relays and usual consumers.
 *
 * @param joints where several wire ends meet
 * @param relays relays that can be had
 * @param loads what consumers usually take
 */
public record Parts(List<JointType> joints, List<RelayType> relays, List<TypicalLoad> loads) {

    public Parts {
        joints = List.copyOf(joints);
        relays = List.copyOf(relays);
        loads = List.copyOf(loads);
        refuseTwice(joints, JointType::code);
        refuseTwice(relays, RelayType::code);
        refuseTwice(loads, load -> load.circuit() + " " + load.part());
    }

    private static <T> void refuseTwice(List<T> rows, Function<T, String> name) {
        Set<String> seen = new HashSet<>();
        for (T row : rows) {
            if (!seen.add(name.apply(row))) {
                throw new IllegalArgumentException(
                        "the catalogue has " + name.apply(row) + " twice");
            }
        }
    }

    /** @return the joint, if there is one with this code */
    public Optional<JointType> findJoint(String code) {
        return joints.stream().filter(joint -> joint.code().equals(code)).findFirst();
    }

    /**
     * @param ends how many wire ends are to meet in one connection
     * @param terminal code of the terminal on them
     * @return the smallest joint for them, if the table has one
     */
    public Optional<JointType> findJointFor(int ends, String terminal) {
        return joints.stream()
                .filter(joint -> joint.groups() == 1 && joint.terminal().equals(terminal))
                .filter(joint -> joint.ends() >= ends)
                .min((one, other) -> Integer.compare(one.ends(), other.ends()));
    }

    /** @return the relay, if there is one with this code */
    public Optional<RelayType> findRelay(String code) {
        return relays.stream().filter(relay -> relay.code().equals(code)).findFirst();
    }

    /** @return what consumers of that service usually take, in the order of the table */
    public List<TypicalLoad> loadsOf(String service) {
        return loads.stream().filter(load -> service.equals(load.service())).toList();
    }
}
