package org.loomwright.app;

import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.catalogue.CatalogueOverride;
import org.loomwright.exchange.TradeTables;
import org.springframework.stereotype.Component;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The trade's tables with the own figures of whoever asks. Those of the last few are kept, because reading them takes some time. */
@Component
public class Tables {

    private static final int KEPT = 50;

    private final TradeTables printed;

    private final Map<List<CatalogueOverride>, TradeTables> kept =
            new LinkedHashMap<>(16, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(
                        Map.Entry<List<CatalogueOverride>, TradeTables> eldest) {
                    return size() > KEPT;
                }
            };

    Tables(TradeTables printed) {
        this.printed = printed;
    }

    /** @return the tables as they are printed */
    public TradeTables printed() {
        return printed;
    }

    /** @return the tables with the own figures of these settings */
    public TradeTables with(AnalysisSettings settings) {
        List<CatalogueOverride> overrides = settings.overrides();
        if (overrides.isEmpty()) {
            return printed;
        }
        synchronized (kept) {
            return kept.computeIfAbsent(overrides, TradeTables::load);
        }
    }
}
