package ribmark.proof;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import ribmark.contentfiles.Node;
import ribmark.slips.Model;

/** Turns the file of the weighing model, found sound, into the figures slips and moved lines are judged with. */
final class ModelReader {

    private ModelReader() {}

    static Model read(Node file) {
        Node loss = file.get("loss");
        Node carcase = file.get("carcase");
        return new Model(
                file.get("standing").text(),
                file.get("text").text(),
                new Model.Loss(
                        number(loss, "expected-percent"), number(loss, "sd-percent"), FigureReader.grounds(loss)),
                new Model.CarcaseWeight(
                        number(carcase, "mean-kg"), number(carcase, "sd-kg"), FigureReader.grounds(carcase)),
                slips(file.get("slips")),
                departures(file.get("departures")),
                file.all("lines[]").stream().map(ModelReader::line).toList(),
                file.all("splits[]").stream().map(ModelReader::split).toList());
    }

    private static Model.SlipFigures slips(Node node) {
        return new Model.SlipFigures(
                number(node, "none"),
                number(node, "tray-lowest-g"),
                number(node, "tray-highest-g"),
                number(node, "off-division"),
                number(node, "pounds-a-kilogram"),
                number(node, "suspect-below"),
                number(node, "listed-from"),
                FigureReader.grounds(node));
    }

    private static Model.LineFigures departures(Node node) {
        return new Model.LineFigures(
                number(node, "none"),
                number(node, "listed-from"),
                number(node, "fits-from"),
                number(node, "nothing-from"),
                FigureReader.grounds(node));
    }

    private static Model.Line line(Node node) {
        return new Model.Line(
                named(node, "line"),
                node.all("moves[]").stream().map(ModelReader::move).toList());
    }

    private static Model.Move move(Node node) {
        Map<String, Double> points = node.all("points[]").stream()
                .collect(Collectors.toMap(
                        point -> point.get("row").text(), point -> number(point, "points"), Double::sum));
        return new Model.Move(points, FigureReader.grounds(node));
    }

    private static Model.Split split(Node node) {
        return new Model.Split(
                named(node, "split"), number(node, "share"), node.get("rows").texts(), FigureReader.grounds(node));
    }

    private static Model.Named named(Node node, String id) {
        List<Model.Distance> distances = node.all("distances[]").stream()
                .map(distance -> new Model.Distance(distance.get("words").text(), number(distance, "weight")))
                .toList();
        return new Model.Named(
                node.get(id).text(),
                node.get("name").text(),
                node.get("towards").text(),
                node.get("otherwise").text(),
                distances);
    }

    private static double number(Node node, String name) {
        return node.get(name).number();
    }
}
