package chargehand.app.pages;

import java.nio.file.Path;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** The demo shop and the browser, started once for all page tests; these are left out where no Chromium is installed. */
final class Harbour implements ParameterResolver, ExecutionCondition {
    private static final Namespace HERE = Namespace.create(Harbour.class);

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return Chromium.installed().isPresent()
                ? ConditionEvaluationResult.enabled("Chromium is installed")
                : ConditionEvaluationResult.disabled("no Chromium on this machine to look at pages with");
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        Class<?> type = parameter.getParameter().getType();
        return type == DemoServer.class || type == Chromium.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        var store = context.getRoot().getStore(HERE);
        return parameter.getParameter().getType() == DemoServer.class
                ? store.computeIfAbsent(DemoServer.class, key -> DemoServer.start(), DemoServer.class)
                : store.computeIfAbsent(Chromium.class, key -> Chromium.start(program()), Chromium.class);
    }

    private static Path program() {
        return Chromium.installed().orElseThrow();
    }
}
