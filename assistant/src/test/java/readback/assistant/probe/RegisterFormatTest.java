package readback.assistant.probe;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RegisterFormatTest {

    private static RegisterFormat format(RegisterFormat.Type type, boolean highFirst) {
        return new RegisterFormat(type, highFirst, BigDecimal.ONE);
    }

    /** The answers of the examples in Modbus Application Protocol V1.1b3, sections 6.3 and 6.4; from memory. */
    @Test
    void oneRegisterIsAWholeNumber() {
        assertThat(format(RegisterFormat.Type.UINT16, true).number(0x022b)).isEqualTo(555);
        assertThat(format(RegisterFormat.Type.INT16, true).number(0x000a)).isEqualTo(10);
        assertThat(format(RegisterFormat.Type.INT16, true).number(0xfff6)).isEqualTo(-10);
        assertThat(format(RegisterFormat.Type.UINT16, true).number(0xfff6)).isEqualTo(65526);
    }

    /** 118.5 is 0x42ed0000 in IEEE 754: sign 0, exponent 133, fraction 0x6d0000. */
    @Test
    void twoRegistersAreANumberInEitherOrder() {
        assertThat(format(RegisterFormat.Type.FLOAT32, true).number(0x42ed, 0x0000))
                .isEqualTo(118.5);
        assertThat(format(RegisterFormat.Type.FLOAT32, false).number(0x0000, 0x42ed))
                .isEqualTo(118.5);
        assertThat(format(RegisterFormat.Type.UINT32, true).number(0x0001, 0x0000))
                .isEqualTo(65536);
        assertThat(format(RegisterFormat.Type.INT32, true).number(0xffff, 0xffff))
                .isEqualTo(-1);
        assertThat(format(RegisterFormat.Type.UINT32, false).number(0x0000, 0xffff))
                .isEqualTo(4294901760.0);
    }

    @Test
    void theScaleMultiplies() {
        assertThat(new RegisterFormat(RegisterFormat.Type.INT16, true, new BigDecimal("0.1")).number(0xff9c))
                .isEqualTo(-10);
    }

    @Test
    void registersStandInTheRecordAsTheyCame() {
        assertThat(RegisterFormat.written(0x42ed, 0)).isEqualTo("42ed 0000");
    }

    @Test
    void anyRegistersGiveSomeNumberOrNone() {
        Random random = new Random(42);
        List<RegisterFormat.Type> types = List.of(RegisterFormat.Type.values());
        int numbers = 0;
        for (int i = 0; i < 300_000; i++) {
            RegisterFormat.Type type = types.get(random.nextInt(types.size()));
            int[] registers = random.ints(random.nextInt(4)).toArray();
            numbers += Double.isFinite(format(type, random.nextBoolean()).number(registers)) ? 1 : 0;
            assertThat(RegisterFormat.written(registers)).hasSize(Math.max(0, 5 * registers.length - 1));
        }
        assertThat(numbers).as("seed 42").isBetween(50_000, 250_000);
    }
}
