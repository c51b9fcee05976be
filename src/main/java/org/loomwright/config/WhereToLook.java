package org.loomwright.config;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Says in the log where to look once everything is up. */
@Component
class WhereToLook {

    private static final Logger LOG = LoggerFactory.getLogger(WhereToLook.class);

    @EventListener
    void ready(ApplicationReadyEvent event) {
        if (event.getApplicationContext() instanceof WebServerApplicationContext context
                && context.getWebServer() != null) {
            String root = "http://localhost:" + context.getWebServer().getPort();
            LOG.info(
                    """
                    Loomwright is ready.
                        start page   {}/
                        API          {}/api/looms
                        description  {}/swagger-ui.html\
                    """,
                    root,
                    root,
                    root);
        }
    }
}
