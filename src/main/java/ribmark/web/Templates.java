package ribmark.web;

import io.javalin.http.Context;
import io.javalin.rendering.FileRenderer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Fills the templates; every page gets its frame here and nowhere else. */
final class Templates implements FileRenderer {

    private final TemplateEngine engine = new TemplateEngine();
    private final Function<Context, Frame> frame;

    Templates(Function<Context, Frame> frame) {
        this.frame = frame;
        ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver();
        resolver.setPrefix("templates/");
        resolver.setSuffix(".html");
        resolver.setCharacterEncoding("UTF-8");
        resolver.setTemplateMode(TemplateMode.HTML);
        engine.setTemplateResolver(resolver);
    }

    @Override
    public String render(String path, Map<String, ? extends Object> model, Context ctx) {
        Map<String, Object> all = new HashMap<>(model);
        all.put("frame", frame.apply(ctx));
        return engine.process(path.replaceFirst("\\.html$", ""), new org.thymeleaf.context.Context(Locale.UK, all));
    }
}
