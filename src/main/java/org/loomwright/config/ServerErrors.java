package org.loomwright.config;

import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.tomcat.ConfigurableTomcatWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * What the server refuses before the program sees it, such as an address with a malformed escape, is answered with a problem document
 * like everything else, and not with the server's own page in the sender's language.
 */
@Component
class ServerErrors implements WebServerFactoryCustomizer<ConfigurableTomcatWebServerFactory> {

    @Override
    public void customize(ConfigurableTomcatWebServerFactory factory) {
        factory.addContextCustomizers(
                context -> context.getParent().getPipeline().addValve(new ProblemValve()));
    }

    private static final class ProblemValve extends ErrorReportValve {

        @Override
        protected void report(Request request, Response response, @Nullable Throwable throwable) {
            HttpStatus status = HttpStatus.resolve(response.getStatus());
            if (status == null
                    || !status.isError()
                    || response.getContentWritten() > 0
                    || !response.setErrorReported()) {
                return;
            }
            write(
                    response,
                    """
                    {"type":"urn:loomwright:problem:http-%d","title":"%s","status":%d}\
                    """
                            .formatted(status.value(), status.getReasonPhrase(), status.value()));
        }

        private static void write(Response response, String problem) {
            byte[] bytes = problem.getBytes(StandardCharsets.UTF_8);
            try {
                response.setContentType("application/problem+json");
                response.setContentLength(bytes.length);
                response.getOutputStream().write(bytes);
                response.finishResponse();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
