import java.io.FileInputStream;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Prints a line per file and flavour: "compliant", or clause and test of each failed check. */
public final class PaperCheck {
    public static void main(String[] files) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        for (String file : files) {
            for (String name : new String[] {"ua1", "2a"}) {
                PDFAFlavour flavour = PDFAFlavour.fromString(name);
                try (var stream = new FileInputStream(file);
                        var parser = Foundries.defaultInstance().createParser(stream, flavour);
                        var validator = Foundries.defaultInstance().createValidator(flavour, false)) {
                    var result = validator.validate(parser);
                    if (result.isCompliant()) System.out.println("compliant " + name + " " + file);
                    result.getFailedChecks().forEach((rule, count) -> System.out.println("failed " + name + " "
                            + rule.getClause() + "-" + rule.getTestNumber() + " ×" + count + " " + file));
                }
            }
        }
    }
}
