package org.cagewall.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.jgrapht.alg.flow.mincost.CapacityScalingMinimumCostFlow;
import org.jgrapht.alg.flow.mincost.MinimumCostFlowProblem.MinimumCostFlowProblemImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.DirectedWeightedMultigraph;

/**
 * Shares eggs out among hosts: as many eggs as possible; of all ways to do that, one with the least gaps together; of
 * those, one with the least sum of the squares of how many each host takes. The same question has the same answer. A
 * flow of eggs from a source through the hosts, and the places of each, to a sink; what finds no host flows past them,
 * at a price that nothing outweighs. For one thread.
 */
final class FosterFlow {

    private static final int SOURCE = 0;
    private static final int SINK = 1;
    private static final int FIRST_EGG = 2;

    private final int eggs;
    private final int[] places;
    private final DirectedWeightedMultigraph<Integer, DefaultWeightedEdge> graph =
            new DirectedWeightedMultigraph<>(DefaultWeightedEdge.class);
    private final List<Fit> fits = new ArrayList<>();

    private record Fit(int egg, int host, int gap, DefaultWeightedEdge edge) {}

    /**
     * With nothing that fits as yet.
     *
     * @param eggs how many there are to share out
     * @param places how many each host may take, none below 0
     */
    FosterFlow(int eggs, int... places) {
        this.eggs = eggs;
        this.places = places.clone();
        for (int vertex = 0; vertex < FIRST_EGG + eggs + places.length; vertex++) {
            graph.addVertex(vertex);
        }
        for (int egg = 0; egg < eggs; egg++) {
            graph.addEdge(SOURCE, egg(egg));
        }
    }

    private static int egg(int index) {
        return FIRST_EGG + index;
    }

    private int host(int index) {
        return FIRST_EGG + eggs + index;
    }

    /**
     * An egg may go to a host.
     *
     * @param gap in days, 0 or more
     */
    void fits(int egg, int host, int gap) {
        fits.add(new Fit(egg, host, gap, graph.addEdge(egg(egg), host(host))));
    }

    /** The host of each egg; empty for one that finds none. */
    List<OptionalInt> shareOut() {
        price();
        return hosts();
    }

    /** A day of gap outweighs every sum of squares, and an egg left over every sum of gaps. */
    private void price() {
        int most = 0;
        for (int each : places) {
            most = Math.max(most, Math.min(each, eggs));
        }
        double day = 1.0 * most * eggs + 1;
        double egg = day * (eggs * fits.stream().mapToInt(Fit::gap).max().orElse(0) + 1);
        for (Fit fit : fits) {
            graph.setEdgeWeight(fit.edge(), fit.gap() * day);
        }
        for (int i = 0; i < eggs; i++) {
            graph.setEdgeWeight(graph.getEdge(SOURCE, egg(i)), 0);
            graph.setEdgeWeight(graph.addEdge(egg(i), SINK), egg);
        }
        for (int host = 0; host < places.length; host++) {
            for (int place = 1; place <= Math.min(places[host], eggs); place++) {
                graph.setEdgeWeight(graph.addEdge(host(host), SINK), 2.0 * place - 1);
            }
        }
    }

    private List<OptionalInt> hosts() {
        Map<DefaultWeightedEdge, Double> flow = new CapacityScalingMinimumCostFlow<Integer, DefaultWeightedEdge>()
                .getMinimumCostFlow(new MinimumCostFlowProblemImpl<>(graph, FosterFlow.this::supply, edge -> 1))
                .getFlowMap();
        List<OptionalInt> hosts = new ArrayList<>();
        for (int egg = 0; egg < eggs; egg++) {
            int wanted = egg;
            hosts.add(fits.stream()
                    .filter(fit -> fit.egg() == wanted && flow.get(fit.edge()) > 0)
                    .mapToInt(Fit::host)
                    .findFirst());
        }
        return hosts;
    }

    private int supply(int vertex) {
        return switch (vertex) {
            case SOURCE -> eggs;
            case SINK -> -eggs;
            default -> 0;
        };
    }
}
