package reglet.reading.binding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import com.google.gson.Gson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.reading.page.Lent;
import reglet.reading.process.Frame;
import reglet.reading.process.Request;

/** A package as it comes from a process that has opened foreign files, and is not trusted. */
class ReceivedTest {
    @TempDir
    Path folder;

    @Test
    void theProcessCanHaveNoFileCopiedThatThePlanDoesNotName() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "not for the package");
        Path sheet = Files.writeString(folder.resolve("a.pdf"), "a sheet of the plan");
        Request asked = Request.assemble("Package", List.of(new Request.Part("Sheet", 1, 1, 1, sheet.toString(), 1, "", List.of())),
            List.of(), List.of(), Map.of());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Received received = new Received(asked, out, 1 << 20)) {
            for (Lent.Stretch wanted : List.of(new Lent.Stretch(secret.toString(), Lent.state(secret), 0, 5),
                new Lent.Stretch(sheet.toString(), "", -1, 5))) {
                assertThrows(IOException.class, () -> received.take(Frame.of(Frame.Kind.COPY, new Gson().toJson(wanted))));
            }
            assertThrows(IOException.class, () -> received.take(Frame.of(Frame.Kind.COPY, "nonsense")));
        }
        assertEquals(0, out.size());
    }
}
